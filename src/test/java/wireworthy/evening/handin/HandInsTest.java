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
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
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

    /** A file as it is handed in, and what is done to it; what is said of it then. */
    static Stream<Arguments> hostile() {
        return Stream.of(
                hostile("saved with a mark of its encoding", it -> "\ufeff" + it, "damaged"),
                hostile("two in one file", it -> it + it, "damaged"),
                hostile("a name that stands twice", it -> twice(it, "\"learner\":7,"), "damaged"),
                hostile("a comment", it -> "// mine\n" + it, "damaged"),
                hostile(
                        "no number",
                        it -> it.replace("\"learner\":7", "\"learner\":NaN"),
                        "damaged"),
                hostile(
                        "an endless number",
                        it -> it.replace("\"learner\":7", "\"learner\":1" + "0".repeat(9_000)),
                        "damaged"),
                hostile(
                        "a number beyond all",
                        it -> it.replace("\"learner\":7", "\"learner\":1e999999999"),
                        "whole number"),
                hostile(
                        "a learner below one",
                        it -> it.replace("\"learner\":7", "\"learner\":0"),
                        "whole number"),
                hostile(
                        "a learner above all",
                        it -> it.replace("\"learner\":7", "\"learner\":65"),
                        "whole number"),
                hostile("nothing for the name", it -> name(it, "null"), "text was expected"),
                hostile("a list for the name", it -> name(it, "[]"), "text was expected"),
                hostile("a name without end", it -> name(it, quoted("x".repeat(7_000))), "longer"),
                hostile("another name", it -> name(it, quoted("Swift")), "was changed"),
                hostile(
                        "without its checksum",
                        it -> it.replaceAll(",\\s*\"checksum\":\"[0-9a-f]*\"", ""),
                        "missing"),
                hostile(
                        "something besides",
                        it -> it.replace("\"learner\":7", "\"learner\":7,\"points\":99"),
                        "not known here"),
                hostile("nested objects", it -> "{\"a\":".repeat(3_000) + it, "damaged"),
                hostile("only noughts", it -> "\0".repeat(it.length()), "damaged"),
                hostile("noughts at its end", it -> it.strip() + "\0".repeat(40), "damaged"),
                hostile("only blanks", it -> " \n\t ", "no hand-in"),
                hostile("a sheet file", it -> "{\"wireworthy\":\"sheet\"}", "no hand-in"));
    }

    private static Arguments hostile(
            final String what, final UnaryOperator<String> done, final String said) {
        return Arguments.of(Named.of(what, done), said);
    }

    private static String twice(final String text, final String part) {
        return text.replace(part, part + part);
    }

    private static String quoted(final String words) {
        return "\"" + words + "\"";
    }

    private static String name(final String text, final String json) {
        return text.replace("\"Wren 7\"", json);
    }

    @ParameterizedTest
    @MethodSource("hostile")
    void whateverIsDoneToAFileItIsNamedAndNotCounted(
            final UnaryOperator<String> done, final String said) throws IOException {
        final String whole = HandInText.of(handIn(7));
        final String text = done.apply(whole);
        assertThat(text).isNotEqualTo(whole);
        Files.writeString(folder.resolve("one.json"), text);

        final HandIns read = HandIns.read(folder, SHEET);

        assertThat(read.taken()).isEmpty();
        assertThat(read.leftOut())
                .singleElement()
                .satisfies(it -> assertThat(it.text()).startsWith("one.json: ").contains(said));
    }

    /** Its checksum is right: somebody took the trouble. */
    @Test
    void whatWasMadeUpWholeCountsOnlyWhereTheSheetAsksForIt() throws IOException {
        final HandIn begun = HandIn.begun(SHEET.mark(), 9, "Rook", NOW);
        final HandIn beyond =
                begun.with(new Reply(SHEET.problems() + 1, List.of("1 V"), false, NOW));
        final HandIn many =
                HandIn.begun(SHEET.mark(), 10, "Rook", NOW)
                        .with(new Reply(1, List.of("1 V", "2 V", "3 V"), false, NOW));
        Files.writeString(folder.resolve("beyond.json"), HandInText.of(beyond));
        Files.writeString(folder.resolve("many.json"), HandInText.of(many));

        final HandIns read = HandIns.read(folder, SHEET);

        assertThat(read.taken()).isEmpty();
        assertThat(read.leftOut())
                .hasSize(2)
                .allSatisfy(it -> assertThat(it.what()).contains("does not ask"));
    }

    @Test
    void aNameInAnotherEncodingAndALinkAreNoHandIns() throws IOException {
        final HandIn umlaut = HandIn.begun(SHEET.mark(), 8, "M\u00f6we", NOW);
        Files.write(
                folder.resolve("latin.json"),
                HandInText.of(umlaut).getBytes(StandardCharsets.ISO_8859_1));
        final Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        Files.createSymbolicLink(
                folder.resolve("link.json"), HandInFile.write(elsewhere, handIn(3)));

        final HandIns read = HandIns.read(folder, SHEET);

        assertThat(read.taken()).isEmpty();
        assertThat(read.leftOut())
                .extracting(HandIns.LeftOut::what)
                .containsExactly(
                        "this is no file", "the file is not UTF-8 text", "this is no file");
    }
}
