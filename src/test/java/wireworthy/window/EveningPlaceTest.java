package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import wireworthy.evening.Asked;
import wireworthy.evening.Sheet;
import wireworthy.evening.Shelf;
import wireworthy.evening.handin.HandIns;
import wireworthy.evening.summary.Summary;
import wireworthy.evening.wish.Wanted;
import wireworthy.evening.wish.Wish;
import wireworthy.evening.wish.WishFile;
import wireworthy.record.SumsInUse;
import wireworthy.window.evening.EveningPlace;
import wireworthy.window.evening.ProjectorDesk;
import wireworthy.window.evening.TestDesks;
import wireworthy.working.Solver;

/** A leader makes a sheet; a learner answers it, closes, goes on, hands in: by keyboard alone. */
class EveningPlaceTest extends WindowTest {
    private static final int MOST_TABS = 90;
    private static final int LEARNER = 3;
    private static final Wish WISH =
            Wish.USUAL.withWanted(
                    Wanted.USUAL
                            .withOneByOne(true)
                            .withTemplates(
                                    List.of(
                                            "voltage-drop/aisle-strips-drop",
                                            "voltage-drop/aisle-strips-drop")));

    private final Sheet sheet = WISH.sheet(Shelf.builtIn());

    @Override
    protected List<Place> places() {
        try {
            WishFile.write(folder.resolve("sheets/choice.json"), WISH);
        } catch (final IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return List.of(
                EveningPlace.of(
                        TestDesks.desk(folder, stick()),
                        new ProjectorDesk(new Solver(), () -> SumsInUse.USUAL),
                        settings));
    }

    private static Path stick() {
        return folder.resolve("stick");
    }

    @Test
    void fromTheSheetToTheHandIn() throws IOException {
        assertThat(lookup((Node it) -> sheet.mark().equals(it.getAccessibleText())).queryAll())
                .isNotEmpty();
        press("Make the papers");
        assertThat(stick()).isDirectoryContaining("glob:**-slip-finder.pdf");

        aPart(KeyCode.DOWN);
        tabTo(it -> it instanceof TextField f && "By its mark".equals(f.getAccessibleText()));
        write(sheet.mark()).push(KeyCode.ENTER);
        assertThat(reads("What is right is said at the end, after the hand-in.")).isTrue();
        press(String.valueOf(LEARNER));
        write("about 7 hundredths").push(KeyCode.ENTER);
        assertThat(labels()).anyMatch(it -> it.contains("problem 1 is still open"));
        assertThat(labels()).anyMatch(it -> it.startsWith("Problem 1 of 2"));
        assertThat(labels()).contains("1 a note, open");
        push(KeyCode.CONTROL, KeyCode.A);
        write(right(1)).push(KeyCode.ENTER);
        assertThat(reads("Problem 1 is kept.")).isTrue();

        reopen();
        press("Go on: learner 3, sheet " + sheet.mark());
        assertThat(labels()).anyMatch(it -> it.startsWith("Problem 2 of 2"));
        write("a little").push(KeyCode.ENTER).push(KeyCode.ENTER);
        assertThat(labels()).anyMatch(it -> it.startsWith("Still open: 2."));
        press("Back to the problems");
        push(KeyCode.CONTROL, KeyCode.A);
        write(right(2)).push(KeyCode.ENTER);
        aPart(KeyCode.UP);
        assertThat(labels()).noneMatch(it -> it.startsWith("Key:"));
        assertThat(reads("I lead this class: show them")).isTrue();
        aPart(KeyCode.DOWN);
        assertThat(reads("Every problem is answered.")).isTrue();
        press("Hand in");
        press("Hand in again");
        assertThat(labels()).anyMatch(it -> it.startsWith("Handed in again"));
        aPart(KeyCode.UP);
        assertThat(labels()).anyMatch(it -> it.startsWith("Key:"));
        aPart(KeyCode.DOWN);

        final HandIns read = HandIns.read(answers(), sheet);
        assertThat(read.taken())
                .singleElement()
                .satisfies(it -> assertThat(it.learner()).isEqualTo(LEARNER));
        assertThat(Summary.of(sheet, read.taken()).problems())
                .allSatisfy(each -> assertThat(each.wrong()).isZero());
        press("See what is right");
        assertThat(labels()).anyMatch(it -> it.startsWith("It is handed in"));
    }

    /** The papers lie in the same folder here; only the hand-ins are wanted. */
    private static Path answers() throws IOException {
        final Path alone = java.nio.file.Files.createTempDirectory(folder, "hand-ins");
        final Path file = stick().resolve("hand-in-" + markOf() + "-" + LEARNER + ".json");
        java.nio.file.Files.copy(file, alone.resolve(file.getFileName()));
        return alone;
    }

    private static String markOf() {
        return WISH.sheet(Shelf.builtIn()).mark();
    }

    private String right(final int problem) {
        return Asked.of(sheet.exercise(LEARNER, problem)).get(0).right();
    }

    /** The part above or below at the side. */
    private void aPart(final KeyCode way) {
        tabTo(it -> "Evening class".equals(it.getAccessibleText()));
        push(way);
    }

    /** The program is closed and opened anew. */
    private void reopen() {
        interact(
                () -> {
                    window = new MainWindow(places(), settings, Background.atOnce()).open();
                    stage.setScene(window.scene());
                });
    }

    private List<String> labels() {
        return lookup((Node it) -> it instanceof javafx.scene.control.Labeled)
                .<javafx.scene.control.Labeled>queryAll()
                .stream()
                .map(each -> String.valueOf(each.getText()))
                .toList();
    }

    private void press(final String button) {
        tabTo(it -> it instanceof Button b && button.equals(b.getText()));
        push(KeyCode.SPACE);
    }

    private void tabTo(final Predicate<Node> wanted) {
        for (int i = 0; i < MOST_TABS && !(focused() != null && wanted.test(focused())); i++) {
            push(KeyCode.TAB);
        }
        assertThat(focused() != null && wanted.test(focused()))
                .as("reached by Tab, at %s", focused())
                .isTrue();
    }

    private Node focused() {
        return window.scene().getFocusOwner();
    }
}
