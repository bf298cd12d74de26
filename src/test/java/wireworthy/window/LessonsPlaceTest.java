package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Slider;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wireworthy.lessons.Block;
import wireworthy.lessons.LessonHeading;
import wireworthy.lessons.Lessons;
import wireworthy.window.parts.SideList;
import wireworthy.working.Solver;

/** Lessons as a person reads them. */
class LessonsPlaceTest extends WindowTest {
    private static final Solver SOLVER = new Solver();
    private static final int FIRST_TEN = 10;
    private static final int MOST_TABS = 60;
    private static final int MOST_LESSONS = 30;
    private static final String BROKEN =
            """
            ---
            id: own
            title: A lesson of my own
            skills: [drop]
            builds-on: []
            reviewed: false
            ---
            This stands.

            ```figure
            id: no-such-figure
            ```

            This stands too.
            """;

    @TempDir static Path own;

    private final TestDesk desk = new TestDesk();

    @Override
    protected List<Place> places() {
        try {
            Files.writeString(own.resolve("90-own.md"), BROKEN);
        } catch (final IOException e) {
            throw new UncheckedIOException(e);
        }
        return List.of(
                new LessonsPlace(() -> Lessons.read(SOLVER, Optional.of(own)), SOLVER, desk));
    }

    @Test
    void theFirstLessonOpensAtItsTopAndIsNotReadYet() {
        assertThat(desk.last).contains("before-you-touch");
        assertThat(desk.read).isEmpty();
    }

    @Test
    void aLessonIsReadItsFigureMovedAndItsQuestionsTakenByKeyboardAlone() {
        open("floor-and-ceiling");
        tabTo(Slider.class::isInstance);
        assertThat(focused().getAccessibleText()).isEqualTo("circuit current, 9.3 A");
        push(KeyCode.RIGHT).push(KeyCode.RIGHT);
        assertThat(focused().getAccessibleText()).isEqualTo("circuit current, 9.5 A");
        assertThat(lookup(".verdict").queryLabeled().getText())
                .isEqualTo("15\u00a0A fits, and only 15\u00a0A");
        for (int i = 0; i < 50; i++) {
            push(KeyCode.RIGHT);
        }
        assertThat(lookup(".verdict").queryLabeled().getText()).startsWith("no rating fits");
        tabTo(node -> node instanceof Button button && button.getText().equals("Practise these"));
        push(KeyCode.SPACE);
        assertThat(desk.practised)
                .extracting(Block.Questions::bank)
                .containsExactly("fuse-margin", "where-fuses-go");
        push(KeyCode.END);
        assertThat(desk.read).containsExactly("floor-and-ceiling");
        assertThat(reads("read")).isTrue();
    }

    @Test
    void linksLeadToLessonsAndTables() {
        tabTo(node -> node instanceof Hyperlink link && link.getText().contains("rating plate"));
        push(KeyCode.SPACE);
        assertThat(desk.last).contains("rating-plate");
        open("floor-and-ceiling");
        tabTo(node -> node instanceof Hyperlink link && link.getText().contains("boat rules"));
        push(KeyCode.SPACE);
        assertThat(desk.tables).containsExactly("boat-rules");
    }

    @Test
    void aWordOfTheTradeIsExplainedUnderItsParagraphByKeyboardAlone() {
        open("circuits");
        tabTo(node -> node instanceof Hyperlink link && link.getText().equals("cores"));
        assertThat(focused().getAccessibleText()).isEqualTo("cores: what it means");
        push(KeyCode.SPACE);
        final Node meaning = lookup(".meaning").query();
        assertThat(text(meaning)).startsWith("A core is one wire with its insulation.");
        assertThat(focused().getAccessibleText()).startsWith("cores: A core is one wire");
        assertThat(top(meaning)).isGreaterThanOrEqualTo(bottom(focused()));
        push(KeyCode.SPACE);
        assertThat(lookup(".meaning").tryQuery()).isEmpty();
    }

    private static double top(final Node node) {
        return node.localToScene(node.getBoundsInLocal()).getMinY();
    }

    private static double bottom(final Node node) {
        return node.localToScene(node.getBoundsInLocal()).getMaxY();
    }

    @Test
    void whatIsLookedForIsFoundByKeyboardAlone() {
        push(KeyCode.F).write("Kirchhoff");
        assertThat(contents().getItems())
                .extracting(LessonHeading::id)
                .containsExactly("circuits", "parallel-loads");
        push(KeyCode.DOWN).push(KeyCode.ENTER);
        assertThat(desk.last).contains("circuits");
        push(KeyCode.F).push(KeyCode.SHORTCUT, KeyCode.A).write("4 % of it");
        push(KeyCode.ENTER);
        assertThat(desk.last).contains("before-you-touch");
        push(KeyCode.SHORTCUT, KeyCode.F).push(KeyCode.SHORTCUT, KeyCode.A).write("no such words");
        assertThat(contents().getItems()).isEmpty();
        assertThat(reads("No lesson has this in it.")).isTrue();
        push(KeyCode.SHORTCUT, KeyCode.A).push(KeyCode.DELETE);
        assertThat(contents().getItems()).hasSizeGreaterThan(FIRST_TEN);
        assertThat(contents().chosen().map(LessonHeading::id)).isEqualTo(desk.last);
    }

    @Test
    void aLinkLeadsOutOfWhatWasFound() {
        push(KeyCode.F).write("titles of lessons hold no such thing");
        tabTo(node -> node instanceof Hyperlink link && link.getText().contains("rating plate"));
        push(KeyCode.SPACE);
        assertThat(desk.last).contains("rating-plate");
        assertThat(contents().chosen().map(LessonHeading::id)).contains("rating-plate");
    }

    @Test
    void aLessonIsSavedAsPagesToPrint() {
        desk.saveTo = Optional.of(own.resolve("pages.pdf"));
        tabTo(
                node ->
                        node instanceof Button button
                                && button.getText().equals("Save as pages to print"));
        push(KeyCode.SPACE);
        assertThat(own.resolve("pages.pdf")).isNotEmptyFile();
        assertThat(shown()).anyMatch(text -> text.startsWith("Saved: "));
    }

    @SuppressWarnings("unchecked")
    private SideList<LessonHeading> contents() {
        return lookup(".side-list").queryAs(SideList.class);
    }

    @Test
    void aBrokenPartIsNamedAndTheRestIsShown() {
        tabTo(SideList.class::isInstance);
        push(KeyCode.END);
        assertThat(desk.last).contains("own");
        assertThat(shown()).anyMatch(text -> text.contains("90-own.md, line 11"));
        assertThat(shown()).anyMatch(text -> text.contains("There are power-current-voltage"));
        assertThat(lookup(".prose-text").<Node>queryAll())
                .anyMatch(node -> text(node).contains("too"));
    }

    private List<String> shown() {
        return lookup(".prose").<Node>queryAll().stream().map(LessonsPlaceTest::text).toList();
    }

    private static String text(final Node node) {
        return node instanceof javafx.scene.text.Text text
                ? text.getText()
                : ((javafx.scene.control.Labeled) node).getText();
    }

    private void open(final String id) {
        tabTo(SideList.class::isInstance);
        for (int i = 0; i < MOST_LESSONS && !desk.last.equals(Optional.of(id)); i++) {
            push(KeyCode.DOWN);
        }
        assertThat(desk.last).contains(id);
    }

    private void tabTo(final Predicate<Node> wanted) {
        for (int i = 0; i < MOST_TABS && !wanted.test(focused()); i++) {
            push(KeyCode.TAB);
        }
        assertThat(wanted.test(focused())).as("reached by Tab, at %s", focused()).isTrue();
    }

    private Node focused() {
        return window.scene().getFocusOwner();
    }
}
