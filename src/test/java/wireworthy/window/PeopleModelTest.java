package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import wireworthy.record.SettingsFile;
import wireworthy.record.SettingsKeeper;
import wireworthy.rules.Skill;

/** Several people on one machine. */
class PeopleModelTest {
    private static final int ANSWERS = 6;

    // Settings are written a little later, on a thread of their own.
    @TempDir(cleanup = CleanupMode.NEVER)
    private Path folder;

    private final AtomicInteger turned = new AtomicInteger();
    private OwnRecord record;
    private SettingsKeeper settings;
    private PeopleModel people;

    @BeforeEach
    void someAnswersOfOneWhoWasNeverAskedForAName() {
        final Path file = folder.resolve("record.sqlite");
        Evenings.right(file, Skill.DROP, ANSWERS);
        record = new OwnRecord(file, Evenings.CLOCK, "me");
        settings = new SettingsKeeper(new SettingsFile(folder.resolve("settings.json")));
        people = new PeopleModel(record, settings, turned::incrementAndGet);
    }

    private int answers() {
        return record.standing().skills().answers();
    }

    @Test
    void whoIsAddedBeginsWithNothingAndTheFirstKeepsAll() {
        people.add(" Robin ");
        assertThat(people.now()).isEqualTo("Robin");
        assertThat(settings.now().person()).isEqualTo("Robin");
        assertThat(answers()).isZero();
        assertThat(turned).hasValue(1);

        people.use("me");
        assertThat(answers()).isEqualTo(ANSWERS);
    }

    @Test
    void aNewNameKeepsTheAnswers() {
        people.rename("Kit");

        assertThat(people.codes()).containsExactly("Kit");
        assertThat(settings.now().person()).isEqualTo("Kit");
        assertThat(answers()).isEqualTo(ANSWERS);
    }

    @Test
    void aNameThatIsTakenIsRefusedInWordsAndNothingChanges() {
        people.add("Robin");
        people.rename("me");

        assertThat(people.said().get()).contains("called \"me\" already");
        assertThat(people.now()).isEqualTo("Robin");
    }

    @Test
    void whoWasDeletedComesBackWithAllAnswers() {
        people.delete();
        assertThat(people.deleted()).containsExactly("me");
        assertThat(people.now()).isEqualTo("me 2");
        assertThat(answers()).isZero();

        people.undelete("me");
        assertThat(people.deleted()).isEmpty();
        assertThat(people.now()).isEqualTo("me");
        assertThat(answers()).isEqualTo(ANSWERS);
    }

    @Test
    void anExportComesBackAsItWasAndNothingIsTakenTwice() {
        final Path file = folder.resolve("me.json");
        final var before = record.standing().skills();
        people.exportJson(file);
        people.importJson(file);
        assertThat(people.said().get()).contains("0 answers taken in, 6 were here already");

        people.delete();
        people.importJson(file);
        assertThat(people.now()).isEqualTo("me");
        assertThat(record.standing().skills()).isEqualTo(before);
    }

    @Test
    void twoRecordsPutTogetherAreOne() {
        people.add("Robin");
        people.join("me");

        assertThat(people.codes()).containsExactly("Robin");
        assertThat(answers()).isEqualTo(ANSWERS);
    }

    @Test
    void aFileThatIsNoRecordIsRefusedInWords() {
        people.importJson(folder.resolve("nothing.json"));

        assertThat(people.said().get()).isNotEmpty();
        assertThat(answers()).isEqualTo(ANSWERS);
    }
}
