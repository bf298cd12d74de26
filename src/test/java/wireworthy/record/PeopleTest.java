package wireworthy.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wireworthy.practice.Standing;

/** Several people on one machine. */
class PeopleTest {
    private static final Instant NOW = Instant.parse("2026-03-04T19:30:00Z");

    private @TempDir Path folder = Path.of("");
    private RecordFile record = RecordFile.inMemory();

    @BeforeEach
    void robinHasAnswered() {
        record = open("here");
        answer(record, "robin", 0, 12);
        record.reading("robin", "drop", 1, true);
    }

    @AfterEach
    void close() {
        record.close();
    }

    private RecordFile open(final String name) {
        return RecordFile.open(folder.resolve(name + ".sqlite"));
    }

    private static void answer(
            final RecordFile record, final String person, final int from, final int to) {
        for (int i = from; i < to; i++) {
            record.keep(Answers.by(person, i));
        }
    }

    /** All that a person has: what was answered, read, and how the skills hold. */
    private record State(
            List<Answer> answers, Set<Screen> screens, Standing standing, List<SkillDay> days) {
        static State of(final RecordFile record, final String code) {
            return new State(
                    record.answers(code),
                    record.screensRead(code),
                    record.standing(code),
                    record.days(code));
        }
    }

    private Path exported(final RecordFile from, final String code, final String name) {
        final Path file = folder.resolve(name + ".json");
        from.people().exportJson(code, file);
        return file;
    }

    @Test
    void aPersonIsAddedAndRenamed() {
        record.people().add(" kim ");
        record.people().rename("robin", "Robin B");

        assertThat(record.people().codes()).containsExactly("kim", "Robin B");
        assertThat(record.answers("Robin B")).hasSize(12);
        assertThat(record.answers("robin")).isEmpty();
    }

    @Test
    void aNameThatIsTakenOrEmptyIsRefused() {
        record.people().add("kim");

        assertThatThrownBy(() -> record.people().rename("kim", "robin"))
                .isInstanceOf(RecordProblem.class)
                .hasMessageContaining("called \"robin\" already");
        assertThatThrownBy(() -> record.people().add("  ")).isInstanceOf(RecordProblem.class);
        assertThatThrownBy(() -> record.people().add("x".repeat(41)))
                .isInstanceOf(RecordProblem.class);
    }

    @Test
    void deletingCanBeUndoneUntilItIsMadeGood() {
        final State before = State.of(record, "robin");
        record.people().delete("robin", NOW);
        assertThat(record.people().codes()).isEmpty();
        assertThat(record.people().deleted()).containsExactly("robin");

        record.people().undelete("robin");
        assertThat(State.of(record, "robin")).isEqualTo(before);

        record.people().delete("robin", NOW);
        record.people().purge();
        assertThat(record.people().deleted()).isEmpty();
        assertThat(record.answers("robin")).isEmpty();
    }

    @Test
    void exportingDeletingAndImportingGivesTheSameState() {
        final State before = State.of(record, "robin");
        final Path file = exported(record, "robin", "robin");
        record.people().delete("robin", NOW);
        record.people().purge();

        assertThat(record.people().importJson(file)).isEqualTo(new People.Imported("robin", 12, 0));
        assertThat(State.of(record, "robin")).isEqualTo(before);
    }

    @Test
    void importingTwiceDoublesNothing() {
        final State before = State.of(record, "robin");
        final Path file = exported(record, "robin", "robin");

        assertThat(record.people().importJson(file)).isEqualTo(new People.Imported("robin", 0, 12));
        assertThat(State.of(record, "robin")).isEqualTo(before);
    }

    @Test
    void anImportBringsBackWhoWasDeleted() {
        final Path file = exported(record, "robin", "robin");
        record.people().delete("robin", NOW);
        record.people().importJson(file);

        assertThat(record.people().codes()).containsExactly("robin");
    }

    @Test
    void twoMachinesPutTogetherInAnyOrderStandAlike() {
        final Path early = exported(record, "robin", "early");
        try (RecordFile other = open("other");
                RecordFile one = open("one");
                RecordFile two = open("two")) {
            other.people().importJson(early);
            answer(other, "robin", 100, 120);
            answer(record, "robin", 50, 75);
            final Path here = exported(record, "robin", "here");
            final Path there = exported(other, "robin", "there");
            one.people().importJson(here);
            one.people().importJson(there);
            two.people().importJson(there);
            two.standing("robin");
            two.people().importJson(here);

            assertThat(one.answers("robin")).hasSize(57);
            assertThat(State.of(one, "robin")).isEqualTo(State.of(two, "robin"));
        }
    }

    @Test
    void anotherPersonOfTheSameNameStaysAnotherPerson() {
        try (RecordFile other = open("other")) {
            answer(other, "robin", 200, 205);
            final People.Imported imported =
                    record.people().importJson(exported(other, "robin", "namesake"));

            assertThat(imported).isEqualTo(new People.Imported("robin 2", 5, 0));
            assertThat(record.answers("robin")).hasSize(12);
            assertThat(record.answers("robin 2")).hasSize(5);
        }
    }

    @Test
    void twoWhoAreOneArePutTogetherAndStaySoWhenTheOtherComesAgain() {
        try (RecordFile other = open("other")) {
            answer(other, "rob", 200, 205);
            final Path file = exported(other, "rob", "rob");
            record.people().importJson(file);
            record.people().join("rob", "robin");
            assertThat(record.people().codes()).containsExactly("robin");
            assertThat(record.answers("robin")).hasSize(17);

            assertThat(record.people().importJson(file))
                    .isEqualTo(new People.Imported("robin", 0, 5));
        }
    }

    @Test
    void answersGoToASpreadsheet() throws IOException {
        final Path file = folder.resolve("robin.csv");
        record.people().exportCsv("robin", file);

        final List<String> lines = Files.readAllLines(file);
        assertThat(lines).hasSize(13);
        assertThat(lines.get(0)).contains("uid", "skill", "typed", "sound", "suspected");
        assertThat(lines.get(1)).contains("drop", "0.526 V", "one-way-only+power-of-ten");
    }

    @Test
    void aFileOfAnotherKindIsRefusedWithItsLineAndNothingTaken() throws IOException {
        final Path file = folder.resolve("other.json");
        Files.writeString(file, "{\n\"wireworthy\": 1,\n\"people\": []}");
        assertThatThrownBy(() -> record.people().importJson(file))
                .isInstanceOf(RecordProblem.class)
                .hasMessageStartingWith("other.json can't be imported: line 3");

        final Path good = exported(record, "robin", "robin");
        Files.writeString(file, Files.readString(good).replace("\"drop\"", "\"drip\""));
        assertThatThrownBy(() -> record.people().importJson(file))
                .isInstanceOf(RecordProblem.class);
        Files.writeString(
                file, Files.readString(good).replace("\"wireworthy\" : 1", "\"wireworthy\" : 9"));
        assertThatThrownBy(() -> record.people().importJson(file))
                .hasMessageContaining("newer Wireworthy");
        assertThat(record.people().codes()).containsExactly("robin");
    }
}
