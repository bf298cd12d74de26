package wireworthy.evening.handin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wireworthy.evening.Asked;
import wireworthy.evening.EveningProblem;
import wireworthy.evening.Pick;
import wireworthy.evening.Sheet;
import wireworthy.evening.SheetPlan;
import wireworthy.evening.Shelf;
import wireworthy.rules.Skill;

/** Whatever lies in a folder, each of its files is counted once or named with the reason. */
class HandInFolderTest {
    private static final Instant NOW = Instant.parse("2026-03-04T19:05:06.789Z");
    private static final Shelf SHELF = Shelf.builtIn();
    private static final int DAMAGED = 2_000;

    @TempDir Path folder;

    private static Sheet sheet(final int seed) {
        return Sheet.of(
                new SheetPlan(
                        Pick.BySkills.of(EnumSet.of(Skill.DROP, Skill.CIRCUIT_IDEAS), 4),
                        true,
                        64,
                        false,
                        seed),
                SHELF);
    }

    private static HandIn handIn(final Sheet sheet, final int learner, final String name) {
        HandIn handIn = HandIn.begun(sheet.mark(), learner, name, NOW);
        for (int problem = 1; problem <= sheet.problems(); problem++) {
            final List<String> typed =
                    Asked.of(sheet.exercise(learner, problem)).stream().map(Asked::right).toList();
            handIn = handIn.with(new Reply(problem, typed, false, NOW.plusSeconds(problem)));
        }
        return handIn;
    }

    private HandInFolder read() {
        return HandInFolder.read(folder, (files, all) -> {});
    }

    /** As many as an evening course in all: no sheet has more than 64 learners. */
    @Test
    void aThousandHandInsOfSeveralSheetsAreEachCountedOnceWithTheirSheet() throws IOException {
        final List<Sheet> sheets =
                Stream.iterate(1, i -> i + 1).limit(16).map(i -> sheet(i)).toList();
        int made = 0;
        for (final Sheet sheet : sheets) {
            for (int learner = 1; learner <= 64 && made < 1_000; learner++, made++) {
                HandInFile.write(folder, handIn(sheet, learner, "Wren " + learner));
            }
        }

        final HandInFolder read = read();

        assertThat(read.sheets()).hasSize(16);
        assertThat(read.sheets().get(0).files()).isEqualTo(64);
        int taken = 0;
        for (final Sheet sheet : sheets) {
            final HandIns of = read.of(sheet);
            taken += of.taken().size();
            assertThat(of.taken().size() + of.leftOut().size()).isEqualTo(1_000);
            assertThat(of.leftOut())
                    .allSatisfy(each -> assertThat(each.what()).startsWith("it belongs to"));
        }
        assertThat(taken).isEqualTo(1_000);
    }

    /** Whatever was done to a file, it counts as it was handed in or not at all. */
    @Test
    void noDamageIsTakenForAnAnswerNorLosesAFile() throws IOException {
        final SplittableRandom random = new SplittableRandom(5);
        final Sheet sheet = sheet(1);
        final HandIn whole = handIn(sheet, 7, "Swift");
        final byte[] text = HandInText.of(whole).getBytes(StandardCharsets.UTF_8);
        for (int i = 0; i < DAMAGED; i++) {
            Files.write(folder.resolve("h" + i), damaged(text, random));
        }

        final HandIns read = read().of(sheet);

        assertThat(read.taken().size() + read.leftOut().size()).isEqualTo(DAMAGED);
        assertThat(read.taken()).allSatisfy(each -> assertThat(each).isEqualTo(whole));
        assertThat(read.leftOut())
                .allSatisfy(
                        each -> {
                            assertThat(each.what()).isNotBlank();
                            assertThat(each.remedy()).isNotBlank();
                        });
    }

    private static byte[] damaged(final byte[] text, final SplittableRandom random) {
        final byte[] bytes = text.clone();
        final int at = random.nextInt(bytes.length);
        return switch (random.nextInt(4)) {
            case 0 -> java.util.Arrays.copyOf(bytes, at);
            case 1 -> with(bytes, at, (byte) random.nextInt(256));
            case 2 -> with(bytes, at, (byte) ('0' + random.nextInt(10)));
            default -> twice(bytes, at, random.nextInt(bytes.length));
        };
    }

    private static byte[] with(final byte[] bytes, final int at, final byte sign) {
        bytes[at] = sign;
        return bytes;
    }

    /** A stretch of it comes twice. */
    private static byte[] twice(final byte[] bytes, final int from, final int to) {
        final byte[] more = new byte[bytes.length + Math.max(0, to - from)];
        final int end = Math.max(from, to);
        System.arraycopy(bytes, 0, more, 0, end);
        System.arraycopy(bytes, Math.min(from, end), more, end, bytes.length - from);
        return more;
    }

    @Test
    void whereTwoPeopleTookOneNumberItIsSaid() throws IOException {
        final Sheet sheet = sheet(1);
        Files.writeString(folder.resolve("a"), HandInText.of(handIn(sheet, 3, "Wren")));
        Files.writeString(folder.resolve("b"), HandInText.of(handIn(sheet, 3, "Swift")));
        Files.writeString(folder.resolve("c"), HandInText.of(handIn(sheet, 3, "wren")));

        final HandIns read = read().of(sheet);

        assertThat(read.taken()).hasSize(1);
        assertThat(read.leftOut()).hasSize(2);
        assertThat(read.leftOut().get(0).text())
                .startsWith("b: learner 3 also handed in a.")
                .contains("two people took the same number");
        assertThat(read.leftOut().get(1).text()).endsWith("nothing need be done.");
    }

    @Test
    void theFilesOfASheetAreThoseThatBelongToIt() throws IOException {
        final Sheet sheet = sheet(1);
        final Path own = HandInFile.write(folder, handIn(sheet, 3, "Wren"));
        HandInFile.write(folder, handIn(sheet(2), 3, "Wren"));
        Files.writeString(folder.resolve("notes.txt"), "bring the projector");

        assertThat(read().files(sheet.mark())).containsExactly(own);
    }

    @Test
    void howFarTheReadingIsIsTold() throws IOException {
        for (int i = 0; i < 3; i++) {
            Files.writeString(folder.resolve("f" + i), "");
        }
        final List<String> told = new ArrayList<>();
        HandInFolder.read(folder, (files, all) -> told.add(files + "/" + all));
        assertThat(told).containsExactly("1/3", "2/3", "3/3");
    }

    @Test
    void aFolderThatIsNotThereIsSaid() {
        assertThatThrownBy(() -> HandInFolder.read(folder.resolve("none"), (files, all) -> {}))
                .isInstanceOf(EveningProblem.class)
                .hasMessageContaining("can't be read");
    }
}
