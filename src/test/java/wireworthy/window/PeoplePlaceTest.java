package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.RadioButton;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;
import wireworthy.rules.Skill;

/** Several people on one machine, by the keyboard alone. */
class PeoplePlaceTest extends WindowTest {
    private static final int ANSWERS = 6;
    private static final int MOST_KEYS = 40;

    private Path home;
    private OwnRecord record;
    private PeopleModel model;

    /** Files that the person would pick. */
    private final class Picked implements FileAsking {
        @Override
        public Optional<Path> open(final Node from, final String title, final String ending) {
            return Optional.of(home.resolve("kept." + ending));
        }

        @Override
        public Optional<Path> save(
                final Node from, final String title, final String name, final String ending) {
            return Optional.of(home.resolve("kept." + ending));
        }

        @Override
        public Optional<Path> folder(final Node from, final String title) {
            return Optional.empty();
        }

        @Override
        public Optional<Path> folderToRead(final Node from, final String title) {
            return Optional.empty();
        }
    }

    @Override
    protected List<Place> places() {
        try {
            home = Files.createTempDirectory(folder, "people");
        } catch (final IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        final Path file = home.resolve("record.sqlite");
        Evenings.right(file, Skill.DROP, ANSWERS);
        record = new OwnRecord(file, Evenings.CLOCK, "me");
        model = new PeopleModel(record, settings, () -> {});
        return List.of(new PeoplePlace(model, new Picked()));
    }

    @BeforeEach
    void begin() {
        settled();
    }

    private int answers() {
        return record.standing().skills().answers();
    }

    @Test
    void someoneNewIsAddedAndTheFirstOneGoesOnWithAllAnswers() {
        name("Add", "Robin");
        assertThat(record.person()).isEqualTo("Robin");
        assertThat(answers()).isZero();

        tabTo(RadioButton.class::isInstance);
        push(KeyCode.LEFT);
        settled();
        assertThat(record.person()).isEqualTo("me");
        assertThat(answers()).isEqualTo(ANSWERS);
        assertThat(settings.now().person()).isEqualTo("me");
    }

    @Test
    void aNewNameKeepsTheAnswersAndATakenOneIsRefusedInWords() {
        name("Rename", "Kit");
        assertThat(reads("“me” is called “Kit” now.")).isTrue();
        assertThat(answers()).isEqualTo(ANSWERS);

        name("Add", "Kit");
        assertThat(model.said().get()).contains("called \"Kit\" already");
        assertThat(record.person()).isEqualTo("Kit");
    }

    @Test
    void anExportIsWrittenAndComesBackAfterTheRecordIsDeleted() {
        press("Export as CSV");
        press("Export as JSON");
        assertThat(home.resolve("kept.csv")).isNotEmptyFile();
        press("Delete “me”");
        assertThat(answers()).isZero();

        press("Import a record");
        assertThat(reads("“me”: 0 answers taken in, 6 were here already.")).isTrue();
        assertThat(answers()).isEqualTo(ANSWERS);
    }

    @Test
    void whoWasDeletedIsBroughtBack() {
        press("Delete “me”");
        assertThat(reads("Deleted: me")).isTrue();

        press("Bring back");
        assertThat(record.person()).isEqualTo("me");
        assertThat(answers()).isEqualTo(ANSWERS);
    }

    @Test
    void twoRecordsArePutTogether() {
        name("Add", "Robin");
        press("Put together");

        assertThat(model.codes()).containsExactly("Robin");
        assertThat(answers()).isEqualTo(ANSWERS);
    }

    @Test
    void nothingElseIsBegunWhileTheRecordIsBeingRead() {
        interact(
                () -> {
                    model.by(new Never());
                    model.add("Robin");
                    model.delete();
                });

        assertThat(record.person()).isEqualTo("me");
        assertThat(model.busy().get()).isTrue();
        assertThat(reads("One moment: the record is being read or written.")).isTrue();
    }

    /** Work that never ends. */
    private static final class Never implements Background {
        @Override
        public <T> void run(
                final java.util.function.Supplier<T> work,
                final java.util.function.Consumer<T> then) {
            // It goes on and on.
        }
    }

    /** Types a name into the field before a button, and Enter. */
    private void name(final String button, final String name) {
        tabTo(named(button));
        push(KeyCode.SHIFT, KeyCode.TAB);
        assertThat(focused()).isInstanceOf(TextField.class);
        write(name).push(KeyCode.ENTER);
        settled();
    }

    private void press(final String button) {
        tabTo(named(button));
        push(KeyCode.SPACE);
        settled();
    }

    private static Predicate<Node> named(final String text) {
        return node -> node instanceof Button button && text.equals(button.getText());
    }

    private void settled() {
        WaitForAsyncUtils.waitForFxEvents();
    }

    private void tabTo(final Predicate<Node> wanted) {
        for (int i = 0; i < MOST_KEYS && !wanted.test(focused()); i++) {
            push(KeyCode.TAB);
        }
        assertThat(focused()).matches(wanted);
    }

    private Node focused() {
        return window.scene().getFocusOwner();
    }
}
