package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wireworthy.lessons.Block;
import wireworthy.practice.Problem;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.rules.Skill;
import wireworthy.working.Solver;

/** A working filled in line by line by a person at the keyboard. */
class PracticeLinesTest extends WindowTest {
    private static final AtomicInteger RECORDS = new AtomicInteger();
    private static final Ref LOOP = Ref.circuit(Quantity.LOOP_LENGTH);
    private static final Ref RESISTANCE = Ref.circuit(Quantity.LOOP_RESISTANCE);
    private static final Ref DROP = Ref.circuit(Quantity.DROP);

    private PracticeModel model;
    private Path file;

    @Override
    protected List<Place> places() {
        file = folder.resolve("lines-" + RECORDS.incrementAndGet() + ".sqlite");
        model = asked(file);
        return List.of(new PracticePlace(model, problem -> {}, InUse.USUAL));
    }

    /** Out and back is snug, the resistance loose: one line folded, the others asked. */
    private static FigureModel figure(final PracticeModel of) {
        return of.figure().orElseThrow();
    }

    private static PracticeModel asked(final Path file) {
        Evenings.right(file, Skill.OUT_AND_BACK_LENGTH, 6);
        Evenings.right(file, Skill.RESISTANCE_OF_A_CABLE, 2);
        return modelOn(file);
    }

    private static PracticeModel modelOn(final Path file) {
        final Learner learner = new Learner(file, new Solver(), Evenings.CLOCK);
        learner.reading().join();
        learner.want(List.of(new Block.Questions(1, "voltage-drop", List.of("aisle-strips-drop"))));
        return new PracticeModel(learner);
    }

    private static String right(final PracticeModel model, final Ref ref, final double times) {
        final Problem problem = figure(model).exercise();
        return "%.6g".formatted(problem.worked().value(ref).orElseThrow() * times);
    }

    private String right(final Ref ref) {
        return right(model, ref, 1);
    }

    private String focused() {
        final Node owner = stage.getScene().getFocusOwner();
        return owner.getAccessibleText() == null && owner instanceof Labeled labeled
                ? labeled.getText()
                : String.valueOf(owner.getAccessibleText());
    }

    private void tabTo(final String name) {
        for (int i = 0; i < 30 && !focused().startsWith(name); i++) {
            push(KeyCode.TAB);
        }
        assertThat(focused()).startsWith(name);
    }

    private List<String> texts() {
        return lookup((Node it) -> it instanceof Labeled && it.isVisible()).queryAll().stream()
                .map(it -> ((Labeled) it).getText())
                .filter(Objects::nonNull)
                .toList();
    }

    private int kept() {
        final long seed = figure(model).exercise().seed();
        return Evenings.kept(file, "voltage-drop", seed).size();
    }

    @Test
    void aPersonWorksLineByLineWithHelpAndNothingButTheKeyboard() {
        tabTo("Line by line");
        push(KeyCode.SPACE);
        assertThat(focused()).as("the first line that is asked").isEqualTo("loop resistance");

        tabTo("Help with line 2, loop resistance: what it needs, 1 of 4");
        push(KeyCode.SPACE);
        assertThat(texts()).anyMatch(text -> text.startsWith("Needed here: resistivity"));
        assertThat(focused()).isEqualTo("Help with line 2, loop resistance: the rule, 2 of 4");
        push(KeyCode.ALT, KeyCode.DIGIT2);
        assertThat(texts()).anyMatch(text -> text.startsWith("The rule, length over section"));
        assertThat(reads("yours, with help")).isTrue();

        push(KeyCode.SHIFT, KeyCode.TAB).write(right(RESISTANCE)).push(KeyCode.ENTER);
        assertThat(reads("sound")).isTrue();
        assertThat(focused()).as("on to the answer").isEqualTo("drop");
        write(right(DROP)).push(KeyCode.ENTER);
        assertThat(reads("Next problem")).isTrue();
        assertThat(kept()).isEqualTo(2);
    }

    @Test
    void aLineLeftWithTabIsMarkedAndItsSlipNamed() {
        clickOn("Line by line");
        clickOn("Unfold line 1");
        assertThat(focused()).isEqualTo("loop length");
        write(right(model, LOOP, 0.5)).push(KeyCode.TAB);

        assertThat(reads("not sound")).isTrue();
        assertThat(texts()).anyMatch(text -> text.contains("counted one way"));
        assertThat(kept()).isEqualTo(1);
    }

    @Test
    void whatIsTypedIsThereWhenTheLinesAreDrawnAgain() {
        clickOn("Line by line");
        write("0.1");
        clickOn("Show the rule").clickOn("Line by line");

        final TextField field =
                lookup((Node it) -> "loop resistance".equals(it.getAccessibleText())).query();
        assertThat(field.getText()).isEqualTo("0.1");
    }

    @Test
    void theLineThatWouldSettleTheSlipsIsOpenedAndAnswered() {
        clickOn(".answer").write(right(model, DROP, 5)).push(KeyCode.ENTER);
        assertThat(texts()).anyMatch(text -> text.contains("What did you get for the"));
        final Ref asked = figure(model).settlingLine().orElseThrow().ref();

        clickOn("Answer that line");
        assertThat(focused()).isEqualTo(asked.quantity().words());
        write(right(model, asked, 0.5)).push(KeyCode.ENTER);
        clickOn("See the workings");
        assertThat(reads("here they part")).isTrue();
    }

    @Test
    void everyControlHasAName() {
        clickOn("Line by line");
        assertThat(Accessibility.unlabelled(stage.getScene().getRoot())).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"1024, 700, 100", "1024, 700, 150", "1024, 700, 200"})
    void nothingIsCutOff(final double width, final double height, final int textPerCent) {
        interact(
                () -> {
                    final Scene scene = new Scene(filledIn(), width, height);
                    Looks.dress(scene, Theme.LIGHT, textPerCent);
                    scene.snapshot(null);
                    assertThat(Screens.cutOff(scene.getRoot())).isEmpty();
                });
    }

    @Test
    void itLooksTheSameInEverySetting() {
        interact(
                () -> {
                    Screens.render("practice-lines", this::filledIn);
                    Screens.render("practice-lines-new", this::firstContact);
                    Screens.render("practice-lines-settling", this::settling);
                });
        assertThat(Path.of("target/screens/practice-lines-dark.png")).isNotEmptyFile();
    }

    /** A folded line, one worked with help and wrong, and an answer that follows from it. */
    private Parent filledIn() {
        final PracticeModel shown = asked(fresh());
        return built(
                shown,
                () -> {
                    figure(shown).lineByLine();
                    final LinesModel lines = figure(shown).lines();
                    final LineRow resistance = lines.rowFor(RESISTANCE).orElseThrow();
                    lines.help(resistance);
                    lines.help(resistance);
                    resistance.typed().set(right(shown, RESISTANCE, 0.5));
                    figure(shown).leave(resistance);
                    lines.answer().typed().set(right(shown, DROP, 0.5));
                    figure(shown).leave(lines.answer());
                });
    }

    private Parent firstContact() {
        final PracticeModel shown = modelOn(fresh());
        return built(shown, () -> figure(shown).lineByLine());
    }

    private Parent settling() {
        final PracticeModel shown = modelOn(fresh());
        return built(
                shown,
                () -> {
                    figure(shown).typed().set(right(shown, DROP, 5));
                    figure(shown).answer();
                });
    }

    private static Path fresh() {
        return folder.resolve("picture-" + RECORDS.incrementAndGet() + ".sqlite");
    }

    private Parent built(final PracticeModel shown, final Runnable act) {
        settings.change(it -> it.withPlace(PracticePlace.ID));
        final MainWindow whole =
                new MainWindow(
                        List.of(
                                new TestPlace("Lessons"),
                                new PracticePlace(shown, problem -> {}, InUse.USUAL),
                                new TestPlace("Tables")),
                        settings,
                        Background.atOnce());
        whole.open();
        act.run();
        final Parent root = whole.scene().getRoot();
        whole.scene().setRoot(new Group());
        return root;
    }
}
