package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import wireworthy.evening.Asked;
import wireworthy.evening.Pick;
import wireworthy.evening.Sheet;
import wireworthy.evening.SheetPlan;
import wireworthy.evening.Shelf;
import wireworthy.evening.handin.HandIn;
import wireworthy.evening.handin.HandInFile;
import wireworthy.evening.summary.MadeUpClass;
import wireworthy.evening.summary.Summary;
import wireworthy.marking.SlipFigures;
import wireworthy.practice.Problem;
import wireworthy.record.SumsInUse;
import wireworthy.rules.FigureText;
import wireworthy.rules.Skill;
import wireworthy.window.evening.EveningPlace;
import wireworthy.window.evening.ProjectorDesk;
import wireworthy.window.evening.TestDesks;
import wireworthy.working.Solver;

/** A leader at the projector and afterwards, by keyboard and mouse. */
class EveningRoomTest extends WindowTest {
    private static final Sheet SHEET =
            Sheet.of(
                    new SheetPlan(
                            new Pick.ByTemplates(
                                    List.of(
                                            "current/step-strip-current",
                                            "voltage-drop/aisle-strips-drop")),
                            false,
                            12,
                            false,
                            3),
                    Shelf.builtIn());

    private final Solver solver = new Solver();

    @Override
    protected List<Place> places() {
        return List.of(
                EveningPlace.of(
                        TestDesks.desk(folder, folder.resolve("in")),
                        new ProjectorDesk(solver, () -> SumsInUse.USUAL),
                        settings),
                new TestPlace("Tables"));
    }

    private void part(final String title) {
        final Node entry =
                lookup(".side-title").queryAll().stream()
                        .filter(it -> it instanceof Text t && title.equals(t.getText()))
                        .findFirst()
                        .orElseThrow(() -> new AssertionError(lookup(".side-title").queryAll()));
        clickOn(entry);
    }

    private TextField field() {
        return lookup(".projector-bar .text-field").queryAs(TextField.class);
    }

    private long lines() {
        return lookup(".working-joint").queryAll().size();
    }

    private boolean readsStart(final String text) {
        return lookup(
                        (Node it) ->
                                it instanceof Labeled l
                                        && String.valueOf(l.getText()).startsWith(text))
                .tryQuery()
                .isPresent();
    }

    @Test
    void aProblemIsWorkedOnTheWallWithFiguresCalledOut() {
        final Problem problem = (Problem) SHEET.exercise(1, 1);
        final String right = Asked.of(problem).get(0).right();
        final String upsideDown =
                SlipFigures.of(problem.worked(), problem.asked()).stream()
                        .filter(each -> each.ids().contains("ohm-upside-down"))
                        .map(
                                each ->
                                        FigureText.of(
                                                each.value(),
                                                problem.asked().quantity().dimension(),
                                                4))
                        .findFirst()
                        .orElseThrow();
        part("At the projector");
        clickOn(".mark-field").write(SHEET.mark()).type(KeyCode.ENTER);
        clickOn("Show it large");
        assertThat(reads("Problem 1 of 2")).isTrue();

        // Nothing tells the answer yet; the field has the keyboard, and the lines come by Space.
        assertThat(lines()).isZero();
        write(upsideDown + "; " + right + "; 0.0123 A; " + upsideDown).type(KeyCode.ENTER);
        assertThat(field().getText()).isEmpty();
        assertThat(reads(upsideDown.replace(' ', '\u00a0') + " × 2")).isTrue();
        assertThat(readsStart("a slip")).isFalse();

        push(KeyCode.CONTROL, KeyCode.ENTER);
        assertThat(reads("sound: 1")).isTrue();
        assertThat(reads("a slip: 2")).isTrue();
        assertThat(reads("not known: 1")).isTrue();
        clickOn("Show why");
        assertThat(reads("What gives " + upsideDown)).isTrue();
        type(KeyCode.ESCAPE);
        assertThat(reads("What gives " + upsideDown)).isFalse();

        write("heaps").type(KeyCode.ENTER);
        assertThat(field().getSelectedText()).isEqualTo("heaps");
        type(KeyCode.SPACE);
        assertThat(lines()).isEqualTo(1);
        assertThat(field().getText()).isEqualTo("heaps");
        type(KeyCode.ESCAPE);
        assertThat(field().getText()).isEmpty();
        assertThat(lookup(".projector").tryQuery()).isPresent();
        type(KeyCode.LEFT);
        assertThat(lines()).isZero();
        push(KeyCode.CONTROL, KeyCode.Z);
        assertThat(reads("a slip: 1")).isTrue();

        push(KeyCode.CONTROL, KeyCode.RIGHT);
        assertThat(reads("Problem 2 of 2")).isTrue();
        assertThat(readsStart("a slip")).isFalse();
        type(KeyCode.ESCAPE);
        assertThat(lookup(".projector").tryQuery()).isEmpty();
        assertThat(lookup(".projector-bar").tryQuery()).isEmpty();
    }

    @Test
    void aLiveFigureIsShownByItselfAndMovedByKeys() {
        part("At the projector");
        clickOn("A live figure");
        clickOn("Show it large");
        assertThat(lookup(".projector .slider").tryQuery()).isPresent();
        final Node slider = lookup(".projector .slider").query();
        final double before = ((Slider) slider).getValue();
        interact(slider::requestFocus);
        type(KeyCode.RIGHT);
        assertThat(((Slider) slider).getValue()).isNotEqualTo(before);
        type(KeyCode.ESCAPE);
        assertThat(lookup(".projector").tryQuery()).isEmpty();
    }

    @Test
    void theWindowFillsTheScreenAndIsGivenBack() {
        type(KeyCode.F11);
        assertThat(stage.isFullScreen()).isTrue();
        type(KeyCode.ESCAPE);
        assertThat(stage.isFullScreen()).isFalse();
    }

    @Test
    void handInsAreReadSummedUpSavedAndDeleted() throws IOException {
        final Sheet sheet =
                Sheet.of(
                        new SheetPlan(
                                Pick.BySkills.of(Set.of(Skill.DROP, Skill.FUSE_FLOOR), 4),
                                true,
                                12,
                                false,
                                3),
                        Shelf.builtIn());
        final Path in = Files.createDirectories(folder.resolve("in"));
        final List<HandIn> handIns =
                new MadeUpClass(sheet, Set.of("one-way-length", "margin-left-out"), 3).handIns();
        handIns.forEach(each -> write(in, each));
        Files.writeString(in.resolve("notes.txt"), "bring the projector");

        part("Afterwards");
        clickOn("Choose a folder of hand-ins");
        assertThat(readsStart("Hand-ins to the sheet " + sheet.mark() + " that count: 12"))
                .isTrue();
        assertThat(readsStart("notes.txt: ")).isTrue();
        assertThat(Summary.of(sheet, handIns).slips())
                .isNotEmpty()
                .allSatisfy(slip -> assertThat(reads(slip.words())).isTrue());

        interact(() -> fire("Save as CSV"));
        assertThat(in.resolve("what-the-group-stumbled-over.csv")).isNotEmptyFile();
        interact(() -> fire("Delete these hand-ins: 12"));
        assertThat(in.toFile().list()).hasSize(14);
        interact(() -> fire("Delete them for good"));
        assertThat(in.toFile().list())
                .containsExactlyInAnyOrder("notes.txt", "what-the-group-stumbled-over.csv");
    }

    private void fire(final String button) {
        lookup((Node it) -> it instanceof Button b && button.equals(b.getText()))
                .queryAs(Button.class)
                .fire();
    }

    private static void write(final Path in, final HandIn each) {
        try {
            HandInFile.write(in, each);
        } catch (final IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
