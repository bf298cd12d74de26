package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import wireworthy.lessons.Block;
import wireworthy.marking.Comparison;
import wireworthy.practice.Problem;
import wireworthy.record.RecordFile;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.working.Solver;

/** Practice as a person uses it: with the keyboard, in the real window. */
class PracticePlaceTest extends WindowTest {
    private final Learner learner =
            new Learner(folder.resolve("practice.sqlite"), new Solver(), Evenings.CLOCK);
    private final PracticeModel model = new PracticeModel(learner);

    @Override
    protected List<Place> places() {
        learner.reading().join();
        learner.want(List.of(new Block.Questions(1, "voltage-drop", List.of("aisle-strips-drop"))));
        return List.of(new PracticePlace(model, problem -> {}, InUse.USUAL));
    }

    private static FigureModel figure(final PracticeModel of) {
        return of.figure().orElseThrow();
    }

    private Problem problem() {
        return figure(model).exercise();
    }

    private void answer(final String figure) {
        clickOn(".answer").write(figure).push(KeyCode.ENTER);
    }

    /** The drop with the cable counted one way. */
    private String oneWay() {
        final double right = problem().worked().value(problem().asked()).orElseThrow();
        return "%.4f".formatted(right / 2);
    }

    @Test
    void aWrongAnswerIsExplainedAndKeptAndTheWayOnIsOneLikeIt() {
        final Problem first = problem();
        answer(oneWay());

        assertThat(shown()).anyMatch(text -> text.contains("counted one way"));
        assertThat(reads("here they part")).isTrue();
        assertThat(kept()).hasSize(1).allMatch(answered -> !answered.right());

        clickOn("One like it, new numbers");
        assertThat(problem().template()).isEqualTo(first.template());
        assertThat(problem().question().figures()).isNotEqualTo(first.question().figures());
        assertThat(reads("here they part")).isFalse();
    }

    @Test
    void theRuleIsShownBesideTheExplanationAndTheWayOnIsOffered() {
        answer(oneWay());
        clickOn("Show the rule");

        assertThat(reads("The rule, in the order one works it")).isTrue();
        assertThat(shown()).anyMatch(text -> text.contains("counted one way"));
        assertThat(reads("here they part")).isTrue();
        clickOn("Next problem");
        assertThat(reads("here they part")).isFalse();
    }

    @Test
    void aSoundAnswerGoesOnToTheNextProblem() {
        final Problem first = problem();
        final double right = first.worked().value(first.asked()).orElseThrow();
        answer("%.3f V".formatted(right));

        assertThat(shown()).anyMatch(text -> text.endsWith("is sound."));
        clickOn("Next problem");
        assertThat(reads("Copy details")).isFalse();
        assertThat(model.exercise().orElseThrow().text()).isNotEqualTo(first.text());
    }

    @Test
    void whatIsTypedIsSaidBackAndAskedAboutWhereItCouldMeanTwoThings() {
        clickOn(".answer").write("0,526");
        assertThat(reads("read as 0.526 V")).isTrue();
        push(KeyCode.SHORTCUT, KeyCode.A);
        answer("1,526");
        assertThat(figure(model).mark().get().orElseThrow().sound()).isEmpty();
        assertThat(kept()).isEmpty();
    }

    @Test
    void nothingTypedAndLessThanNothingAreSaidPlainly() {
        answer("-4");
        assertThat(shown()).anyMatch(text -> text.contains("less than nothing"));
        interact(() -> figure(model).typed().set(""));
        push(KeyCode.ENTER);
        assertThat(shown()).noneMatch(text -> text.contains("less than nothing"));
        assertThat(kept()).isEmpty();
    }

    @Test
    void everyControlHasAName() {
        answer(oneWay());
        assertThat(Accessibility.unlabelled(stage.getScene().getRoot())).isEmpty();
    }

    @Test
    void itLooksTheSameInEverySetting() {
        interact(
                () -> {
                    Screens.render("practice", () -> built(false));
                    Screens.render("practice-wrong", () -> built(true));
                    for (final Screens.Setting setting : Screens.Setting.values()) {
                        final var scene = Screens.scene(built(true), setting);
                        assertThat(Screens.cutOff(scene.getRoot())).as("%s", setting).isEmpty();
                    }
                });
    }

    private javafx.scene.Parent built(final boolean wrong) {
        final Learner other =
                new Learner(folder.resolve("other.sqlite"), new Solver(), Evenings.CLOCK);
        other.reading().join();
        other.want(List.of(new Block.Questions(1, "voltage-drop", List.of("aisle-strips-drop"))));
        final PracticeModel shown = new PracticeModel(other);
        final PracticePlace place = new PracticePlace(shown, problem -> {}, InUse.USUAL);
        settings.change(it -> it.withPlace(PracticePlace.ID));
        final List<Place> all = List.of(new TestPlace("Lessons"), place, new TestPlace("Tables"));
        final MainWindow whole = new MainWindow(all, settings, Background.atOnce()).open();
        if (wrong) {
            final Problem now = figure(shown).exercise();
            final double right = now.worked().value(now.asked()).orElseThrow();
            figure(shown).typed().set("%.4f".formatted(right / 2));
            figure(shown).answer();
        }
        final javafx.scene.Parent root = whole.scene().getRoot();
        whole.scene().setRoot(new javafx.scene.Group());
        return root;
    }

    private List<String> shown() {
        return lookup((Node it) -> it instanceof Labeled && it.isVisible()).queryAll().stream()
                .map(it -> ((Labeled) it).getText())
                .filter(text -> text != null)
                .toList();
    }

    private List<wireworthy.practice.Answered> kept() {
        try (RecordFile record = RecordFile.open(folder.resolve("practice.sqlite"))) {
            return record.standing("me").lately().stream()
                    .filter(answered -> answered.seed() == problem().seed())
                    .toList();
        }
    }

    @Test
    void theWorkingsRunTogetherUntilTheyPart() {
        interact(
                () -> {
                    figure(model).typed().set(oneWay());
                    figure(model).answer();
                });
        final Comparison comparison = figure(model).comparison();
        final int parting = comparison.partsAt().orElseThrow();
        assertThat(comparison.rows().get(parting).sound().ref())
                .isEqualTo(Ref.circuit(Quantity.LOOP_LENGTH));
        assertThat(comparison.rows().subList(0, parting))
                .allMatch(row -> row.wrong().equals(Optional.empty()));
    }
}
