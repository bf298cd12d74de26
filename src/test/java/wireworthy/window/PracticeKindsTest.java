package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.control.RadioButton;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;
import wireworthy.practice.ChoiceProblem;
import wireworthy.practice.Problem;
import wireworthy.record.Answer;
import wireworthy.rules.Ref;
import wireworthy.window.parts.Texts;

/** Every kind of exercise as a person does it with the keyboard alone. */
class PracticeKindsTest extends WindowTest {
    private Path file;
    private PracticeModel model;

    @Override
    protected List<Place> places() {
        file = Kinds.fresh(folder);
        model = Kinds.at(file, Kinds.WHOLE);
        return List.of(
                new PracticePlace(model, exercise -> {}, InUse.USUAL), new TestPlace("Lessons"));
    }

    private void open(final PracticeModel other) {
        interact(() -> model.show(next(other)));
        interact(() -> window.go(PracticePlace.ID));
        interact(this::focusAnswer);
    }

    private static Trainer.Next next(final PracticeModel other) {
        return new Trainer.Next(other.exercise().orElseThrow(), other.why().get());
    }

    /** As after a button that leads on. */
    private void focusAnswer() {
        final Node first =
                lookup((Node it) -> it instanceof RadioButton || it instanceof StepRow).query();
        first.requestFocus();
    }

    private String focused() {
        final Node owner = stage.getScene().getFocusOwner();
        return owner.getAccessibleText() == null && owner instanceof Labeled labeled
                ? labeled.getText()
                : String.valueOf(owner.getAccessibleText());
    }

    private void tabTo(final String name) {
        for (int i = 0; i < 40 && !focused().startsWith(name); i++) {
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

    private double right(final Ref ref) {
        return model.exercise().orElseThrow().circuit().orElseThrow().value(ref).orElseThrow();
    }

    private Ref part(final int number) {
        return ((Problem) model.exercise().orElseThrow()).parts().get(number).ref();
    }

    /** The focus follows once the next field is laid out. */
    private void focusComesTo(final String name) {
        try {
            WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> focused().startsWith(name));
        } catch (final TimeoutException e) {
            assertThat(focused()).startsWith(name);
        }
    }

    private void enter(final double figure) {
        write("%.4g".formatted(figure)).push(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    void aWholeJobIsWorkedPartByPart() {
        assertThat(focused()).startsWith("Your answer: load current in A");
        enter(right(part(0)));
        assertThat(texts()).anyMatch(text -> text.endsWith("is sound."));
        focusComesTo("Your answer: fuse floor");

        enter(right(part(1)) * 1.7);
        assertThat(focused()).as("a wrong one waits").startsWith("Your answer: fuse floor");
        System.gc();
        tabTo("Go on");
        push(KeyCode.SPACE);
        assertThat(texts()).anyMatch(text -> text.contains("your own earlier ones"));
        focusComesTo("Your answer: fuse");
        enter(right(part(2)));
        assertThat(texts()).contains("Next problem", "One like it, new numbers");
        assertThat(Kinds.kept(file)).hasSize(3);
    }

    @Test
    void whatIsTypedWhileThePlaceOpensIsNotLost() {
        interact(
                () -> {
                    window.go("lessons");
                    window.go(PracticePlace.ID);
                    assertThat(focused()).startsWith("Your answer: ");
                });
    }

    @Test
    void aPartCanBeWorkedLineByLine() {
        enter(right(part(0)) * 2);
        tabTo("Go on");
        push(KeyCode.SPACE);
        tabTo("Line by line");
        push(KeyCode.SPACE);

        assertThat(texts()).contains("1  load current", "not sound");
    }

    @Test
    void oneOfAFewIsPickedWithTheArrowsAndMarkedWithEnter() {
        open(Kinds.at(Kinds.fresh(folder), Kinds.CHOICE));
        push(KeyCode.DOWN).push(KeyCode.UP).push(KeyCode.ENTER);

        assertThat(Kinds.kept(file)).extracting(Answer::template).containsExactly(Kinds.CHOICE);
        assertThat(texts())
                .anyMatch(text -> text.startsWith("Sound: ") || text.startsWith("Not sound: "));
        tabTo("One like it, new numbers");
        push(KeyCode.SPACE);
        assertThat(stage.getScene().getFocusOwner()).isInstanceOf(RadioButton.class);
    }

    @Test
    void theArrowsGoThroughAllThatCanBePicked() {
        open(Kinds.at(Kinds.fresh(folder), Kinds.CHOICE));
        final ChoiceModel choice = (ChoiceModel) model.doing().get().orElseThrow();
        for (final ChoiceProblem.Option option : choice.exercise().options()) {
            push(KeyCode.DOWN);
            assertThat(choice.chosen().get()).hasValue(option);
            assertThat(focused()).isEqualTo(Texts.kept(option.text()));
        }
        push(KeyCode.UP);
        assertThat(choice.chosen().get())
                .hasValue(choice.exercise().options().get(choice.exercise().options().size() - 2));
    }

    @Test
    void aFigureTypedAtALineOfAHuntGoesIntoItsField() {
        open(Kinds.hunting(Kinds.fresh(folder)));
        final HuntModel hunt = (HuntModel) model.doing().get().orElseThrow();
        write("4.5");
        assertThat(hunt.picked().get()).hasValue(0);
        assertThat(hunt.figure(0).text().get()).isEqualTo("4.5");
        assertThat(focused()).startsWith("Your answer: ");
    }

    @Test
    void aProblemIsPassedByWithoutCountingAnything() {
        open(Kinds.at(Kinds.fresh(folder), Kinds.CHOICE));
        final String first = model.exercise().orElseThrow().template().id();
        tabTo("Another problem");
        push(KeyCode.SPACE);
        final String second = model.exercise().orElseThrow().template().id();
        push(KeyCode.SHORTCUT, KeyCode.N);
        final String third = model.exercise().orElseThrow().template().id();

        assertThat(List.of(first, second, third)).doesNotHaveDuplicates();
        assertThat(Kinds.kept(file)).isEmpty();
    }

    @Test
    void whatHasNoWorkingSaysSoAtTheHelpItLacks() {
        open(Kinds.at(Kinds.fresh(folder), Kinds.CHOICE));

        for (final String help : List.of("Line by line", "Show the rule")) {
            final Node button = lookup((Node it) -> isButton(it, help)).query();
            assertThat(button.isDisabled()).isTrue();
            assertThat(button.getAccessibleHelp()).contains("no working");
        }
    }

    private static boolean isButton(final Node node, final String does) {
        return node instanceof Button button && button.getText().equals(does);
    }

    @Test
    void stepsAreMovedWithAltAndTheArrowsOrTheirButtons() {
        open(Kinds.at(Kinds.fresh(folder), Kinds.ORDER));
        final OrderModel order = (OrderModel) model.doing().get().orElseThrow();
        final String first = order.step(0);
        push(KeyCode.ALT, KeyCode.DOWN);
        assertThat(order.step(1)).isEqualTo(first);
        assertThat(focused()).as("the step keeps the keyboard").isEqualTo("2.  " + first);

        push(KeyCode.TAB);
        assertThat(focused()).isEqualTo("Move up: " + first);
        push(KeyCode.SPACE);
        assertThat(order.step(0)).isEqualTo(first);
        push(KeyCode.ENTER);
        assertThat(texts()).anyMatch(text -> text.contains("is out of place"));

        interact(() -> sort(order));
        tabTo("Mark again");
        push(KeyCode.SPACE);
        assertThat(texts())
                .contains("In order", "Next problem")
                .as("it has no numbers")
                .doesNotContain("One like it, new numbers");
        assertThat(Kinds.kept(file)).extracting(Answer::aided).containsExactly(false, true);
    }

    private static void sort(final OrderModel order) {
        for (int place = 0; place < order.order().size(); place++) {
            for (int row = order.order().indexOf(place); row > place; row--) {
                order.move(row, -1);
            }
        }
    }

    @Test
    void aSlipIsFoundByItsLineAndTheFigureThatBelongsThere() {
        open(Kinds.hunting(Kinds.fresh(folder)));
        final HuntModel hunt = (HuntModel) model.doing().get().orElseThrow();
        final int wrong = hunt.exercise().wrong();
        for (int i = 0; i <= wrong; i++) {
            push(KeyCode.DOWN);
        }
        push(KeyCode.ENTER);
        assertThat(focused()).startsWith("Your answer: ");
        enter(right(hunt.exercise().rows().get(wrong).ref()));

        assertThat(texts()).anyMatch(text -> text.startsWith("That is the line."));
        assertThat(reads("here they part")).isTrue();
        push(KeyCode.SHORTCUT, KeyCode.N);
        assertThat(model.exercise()).isNotEqualTo(Optional.of(hunt.exercise()));
    }

    @Test
    void everyControlOfEveryKindHasAName() {
        assertThat(Accessibility.unlabelled(stage.getScene().getRoot())).isEmpty();
        for (final String each : List.of(Kinds.CHOICE, Kinds.ESTIMATE, Kinds.ORDER)) {
            open(Kinds.at(Kinds.fresh(folder), each));
            assertThat(Accessibility.unlabelled(stage.getScene().getRoot())).isEmpty();
        }
        open(Kinds.hunting(Kinds.fresh(folder)));
        push(KeyCode.SPACE);
        assertThat(Accessibility.unlabelled(stage.getScene().getRoot())).isEmpty();
    }
}
