package wireworthy.window.evening;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import wireworthy.evening.Asked;
import wireworthy.evening.Pick;
import wireworthy.evening.Sheet;
import wireworthy.evening.SheetPlan;
import wireworthy.evening.Shelf;
import wireworthy.evening.called.Counted;
import wireworthy.rules.Skill;
import wireworthy.window.Background;

/** A sheet on the wall: nothing tells the answer before the leader does. */
class ProjectorModelTest {
    private static final Shelf SHELF = Shelf.builtIn();

    private static ProjectorModel model(final boolean ownNumbers, final boolean toldAtOnce) {
        final Pick pick =
                new Pick.ByTemplates(
                        List.of("current/step-strip-current", "voltage-drop/aisle-strips-drop"));
        final Sheet sheet = Sheet.of(new SheetPlan(pick, ownNumbers, 12, false, 3), SHELF);
        final ProjectorModel model = new ProjectorModel(sheet, toldAtOnce, Background.atOnce());
        model.show(1);
        return model;
    }

    private static ProjectorTask on(final ProjectorModel model) {
        return model.task().get().orElseThrow();
    }

    private static void call(final ProjectorTask task, final String typed) {
        task.typed().set(typed);
        task.take();
    }

    @Test
    void linesAreShownOneByOneAndTakenBack() {
        final ProjectorTask task = on(model(false, false));
        assertThat(task.shown().get()).isZero();
        task.conceal();
        assertThat(task.shown().get()).isZero();
        for (int i = 0; i < 20; i++) {
            task.reveal();
        }
        assertThat(task.shown().get()).isEqualTo(task.lines().size());
        task.conceal();
        assertThat(task.shown().get()).isEqualTo(task.lines().size() - 1);
    }

    /** "for example 4.5 A" and what is to be done are two sentences. */
    @Test
    void whatIsToBeDoneBeginsANewSentence() {
        final ProjectorTask task = on(model(false, false));
        call(task, "heaps");
        assertThat(task.said().get()).contains(". Type it anew").doesNotContain("..");
    }

    @Test
    void whereFiguresComeFromIsKeptBackUntilTheLeaderTellsIt() {
        final ProjectorTask task = on(model(false, false));
        call(task, "1.5; 2.5 A; 1.5");
        assertThat(task.told().get()).isFalse();
        assertThat(task.counted())
                .containsExactly(new Counted("1.5 A", 2), new Counted("2.5 A", 1));
        task.tell();
        assertThat(task.told().get()).isTrue();
        task.tell();
        assertThat(task.told().get()).isFalse();
        assertThat(on(model(false, true)).told().get()).isTrue();
    }

    @Test
    void whatCannotBeReadStaysInTheFieldAndNothingOfTheLineIsTaken() {
        final ProjectorTask task = on(model(false, false));
        call(task, "1.5; heaps");
        assertThat(task.called().get()).isEmpty();
        assertThat(task.typed().get()).isEqualTo("1.5; heaps");
        assertThat(task.said().get()).contains("heaps");
        call(task, "1.5");
        assertThat(task.said().get()).isEmpty();
        assertThat(task.typed().get()).isEmpty();
    }

    @Test
    void theLastOneCalledOutCanBeStruckOut() {
        final ProjectorTask task = on(model(false, false));
        task.undo();
        call(task, "1.5; 2.5");
        task.undo();
        assertThat(task.counted()).containsExactly(new Counted("1.5 A", 1));
        task.undo();
        task.undo();
        assertThat(task.called().get()).isEmpty();
    }

    @Test
    void eachQuestionKeepsWhatWasCalledOutAndShown() {
        final ProjectorModel model = model(false, false);
        assertThat(model.hasPrevious()).isFalse();
        call(on(model), "1.5");
        on(model).reveal();
        model.next();
        assertThat(on(model).called().get()).isEmpty();
        model.previous();
        assertThat(on(model).called().get()).hasSize(1);
        assertThat(on(model).shown().get()).isEqualTo(1);
    }

    @Test
    void thePartsOfAWholeCircuitComeOneByOne() {
        final String whole =
                SHELF.templates(false).stream()
                        .filter(each -> Asked.count(each) > 2)
                        .findFirst()
                        .orElseThrow()
                        .fullId();
        final Sheet sheet =
                Sheet.of(
                        new SheetPlan(
                                new Pick.ByTemplates(List.of(whole, "current/step-strip-current")),
                                false,
                                1,
                                false,
                                3),
                        SHELF);
        final int parts = Asked.count(sheet.templates().get(0));
        final ProjectorModel model = new ProjectorModel(sheet, false, Background.atOnce());
        model.show(1);
        for (int i = 1; i <= parts; i++) {
            assertThat(on(model).title())
                    .isEqualTo("Problem 1 of 2, part %c of %d".formatted('a' + i - 1, parts));
            model.next();
        }
        assertThat(on(model).title()).isEqualTo("Problem 2 of 2");
        assertThat(model.hasNext()).isFalse();
        model.previous();
        assertThat(on(model).title())
                .startsWith("Problem 1 of 2, part " + (char) ('a' + parts - 1));
    }

    @Test
    void whereEachHasOwnNumbersTheWallShowsThoseOfNobody() {
        final Sheet sheet =
                Sheet.of(
                        new SheetPlan(Pick.BySkills.of(Set.of(Skill.DROP), 1), true, 12, false, 3),
                        SHELF);
        final ProjectorModel model = new ProjectorModel(sheet, false, Background.atOnce());
        model.show(1);
        for (int learner = 1; learner <= 12; learner++) {
            assertThat(on(model).exercise().text()).isNotEqualTo(sheet.exercise(learner, 1).text());
        }
        assertThat(on(model(false, false)).exercise().text())
                .isEqualTo(
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
                                        SHELF)
                                .exercise(5, 1)
                                .text());
    }
}
