package wireworthy.evening.handin;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wireworthy.evening.Asked;
import wireworthy.evening.Pick;
import wireworthy.evening.Sheet;
import wireworthy.evening.SheetPlan;
import wireworthy.evening.Shelf;
import wireworthy.rules.Skill;

/** What learners hand in comes back as it was; what is damaged is named, and never counted. */
class HandInsTest {
    private static final Instant NOW = Instant.parse("2026-03-04T19:05:06.789Z");
    private static final Sheet SHEET =
            Sheet.of(
                    new SheetPlan(
                            Pick.BySkills.of(EnumSet.of(Skill.DROP, Skill.CIRCUIT_IDEAS), 4),
                            true,
                            64,
                            false,
                            5),
                    Shelf.builtIn());

    @TempDir Path folder;

    private final Map<String, String> damaged = new TreeMap<>();

    private static HandIn handIn(final int learner) {
        HandIn handIn = HandIn.begun(SHEET.mark(), learner, "Wren " + learner, NOW);
        for (int problem = 1; problem <= SHEET.problems(); problem++) {
            final List<String> typed =
                    Asked.of(SHEET.exercise(learner, problem)).stream().map(Asked::right).toList();
            handIn = handIn.with(new Reply(problem, typed, problem == 2, NOW.plusSeconds(problem)));
        }
        return handIn;
    }

    private void damage(final String name, final byte[] bytes, final String reason)
            throws IOException {
        Files.write(folder.resolve(name), bytes);
        damaged.put(name, reason);
    }

    private void damage(final String name, final String text, final String reason)
            throws IOException {
        damage(name, text.getBytes(StandardCharsets.UTF_8), reason);
    }

    @Test
    void aHandInComesBackAsItWasAndIsReplacedWhole() throws IOException {
        final HandIn first = handIn(7);
        final Path file = HandInFile.write(folder, first);
        assertThat(HandInFile.read(file)).isEqualTo(first);

        final HandIn changed = first.with(new Reply(1, List.of("  1,5 V "), false, NOW));
        assertThat(HandInFile.write(folder, changed)).isEqualTo(file);
        assertThat(HandInFile.read(file).reply(1).orElseThrow().typed()).containsExactly("1,5 V");
        assertThat(folder.toFile().list()).containsExactly(file.getFileName().toString());
    }

    @Test
    void everyDamagedOneIsNamedWithTheReasonAndNoneIsCounted() throws IOException {
        for (int learner = 1; learner <= 40; learner++) {
            HandInFile.write(folder, handIn(learner));
        }
        for (int i = 0; i < 20; i++) {
            final String text = HandInText.of(handIn(41 + i));
            final String n = String.valueOf(i);
            damage("cut" + n, text.substring(0, text.length() * (i + 1) / 22), "cut off");
            damage("typed" + n, text.replace("\"help\":true", "\"help\":false"), "was changed");
            damage(
                    "learner" + n,
                    text.replaceAll("\"learner\":\\d+", "\"learner\":63"),
                    "was changed");
            damage("other" + n, other(i), "it belongs to the sheet 0000-0000");
            damage("version" + n, text.replace("\"version\":1", "\"version\":2"), "version");
            damage("empty" + n, "", "the file is empty");
            damage("deep" + n, "{\"a\":" + "[".repeat(2000 + i), "cut off or damaged");
            damage("wide" + n, text.getBytes(StandardCharsets.UTF_16), "not UTF-8");
            damage("twice" + n, HandInText.of(handIn(1 + i)), "also handed in");
            damage("none" + n, "[" + i + "]", "this is no hand-in");
        }
        try (RandomAccessFile huge = new RandomAccessFile(folder.resolve("huge").toFile(), "rw")) {
            huge.setLength(1L << 30);
        }
        damaged.put("huge", "far larger");
        Files.createDirectory(folder.resolve("folder.json"));
        damaged.put("folder.json", "no file");
        damage("bits", flipped(), "not UTF-8");

        final HandIns read = HandIns.read(folder, SHEET);

        assertThat(read.taken())
                .hasSize(40)
                .allSatisfy(it -> assertThat(it).isEqualTo(handIn(it.learner())));
        assertThat(read.leftOut())
                .extracting(HandIns.LeftOut::file)
                .containsExactlyElementsOf(damaged.keySet());
        for (final HandIns.LeftOut each : read.leftOut()) {
            assertThat(each.text()).contains(damaged.get(each.file()));
        }
    }

    private static String other(final int i) {
        return HandInText.of(HandIn.begun("0000-0000", i + 1, "", NOW));
    }

    private static byte[] flipped() {
        final byte[] bytes = HandInText.of(handIn(64)).getBytes(StandardCharsets.UTF_8);
        Arrays.fill(bytes, 30, 34, (byte) 0xff);
        return bytes;
    }

    @Test
    void ofTwoByOneLearnerTheLaterCounts() throws IOException {
        final HandIn early = handIn(3);
        final HandIn late =
                early.with(
                        new Reply(
                                1,
                                early.reply(1).orElseThrow().typed(),
                                true,
                                NOW.plusSeconds(900)));
        Files.writeString(folder.resolve("a.json"), HandInText.of(late));
        Files.writeString(folder.resolve("b.json"), HandInText.of(early));

        final HandIns read = HandIns.read(folder, SHEET);
        assertThat(read.taken()).containsExactly(late);
        assertThat(read.leftOut()).extracting(HandIns.LeftOut::file).containsExactly("b.json");
    }
}
