package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wireworthy.lessons.Block;
import wireworthy.practice.Problem;
import wireworthy.texts.Language;
import wireworthy.working.Solver;

/** Another language while a problem is being worked: the same problem, and what was typed stays. */
class OtherLanguageTest {
    private static final Clock CLOCK =
            Clock.fixed(Instant.parse("2026-03-01T10:00:00Z"), ZoneOffset.UTC);

    @TempDir private Path folder;

    private final Solver solver = new Solver();
    private Learner learner;
    private PracticeModel english;

    private PracticeModel begun(final String bank, final String... templates) {
        learner = learner();
        learner.want(List.of(new Block.Questions(1, bank, List.of(templates))));
        english = new PracticeModel(learner);
        english.next();
        return english;
    }

    private Learner learner() {
        return new Learner(folder.resolve("answers.db"), solver, CLOCK);
    }

    private PracticeModel inGerman() {
        Language.use(Language.of("de"));
        final Learner other = learner();
        other.takeOver(learner);
        final PracticeModel german = new PracticeModel(other);
        german.takeOver(english);
        return german;
    }

    @AfterEach
    void english() {
        Language.use(Language.ENGLISH);
    }

    @Test
    void theSameProblemStaysWithWhatWasTyped() {
        begun("power", "house-lamp-current").figure().orElseThrow().typed().set("4,5 A");

        final PracticeModel german = inGerman();

        assertThat(german.exercise().orElseThrow().seed())
                .isEqualTo(english.exercise().orElseThrow().seed());
        assertThat(german.exercise().orElseThrow().text())
                .isNotEqualTo(english.exercise().orElseThrow().text());
        assertThat(german.figure().orElseThrow().typed().get()).isEqualTo("4,5 A");
        assertThat(german.figure().orElseThrow().mark().get()).isEmpty();
    }

    @Test
    void aMarkedAnswerIsStillExplainedAndNotKeptTwice() {
        begun("power", "house-lamp-current").figure().orElseThrow().typed().set("999 A");
        english.answer();
        final int kept = answers();

        final PracticeModel german = inGerman();

        final FigureModel figure = german.figure().orElseThrow();
        assertThat(figure.mark().get()).isPresent();
        assertThat(figure.beside().get()).isEqualTo(english.figure().orElseThrow().beside().get());
        assertThat(answers()).isEqualTo(kept);
        figure.typed().set(right(german));
        german.answer();
        assertThat(answers()).isEqualTo(kept + 1);
        assertThat(learner().record().lately().get(kept).aided()).isTrue();
    }

    @Test
    void whatTheLessonStillAsksComesNext() {
        begun("power", "house-lamp-current", "heater-while-charging");

        final PracticeModel german = inGerman();
        german.next();

        assertThat(german.exercise().orElseThrow().template().id())
                .isEqualTo("heater-while-charging");
    }

    @Test
    void aChoiceStaysChosen() {
        final ChoiceModel choice =
                (ChoiceModel) begun("circuit-ideas", "what-comes-back").doing().get().orElseThrow();
        choice.chosen().set(Optional.of(choice.exercise().options().get(1)));
        choice.answer();

        final ChoiceModel german = (ChoiceModel) inGerman().doing().get().orElseThrow();

        assertThat(german.chosen().get()).contains(german.exercise().options().get(1));
        assertThat(german.marked().get()).isEqualTo(german.chosen().get());
        assertThat(german.exercise().options().get(1).right())
                .isEqualTo(choice.exercise().options().get(1).right());
    }

    @Test
    void anOrderStaysAsItWasPut() {
        final OrderModel order =
                (OrderModel)
                        begun("ways-of-working", "before-touching-the-wiring")
                                .doing()
                                .get()
                                .orElseThrow();
        order.move(0, 1);

        final OrderModel german = (OrderModel) inGerman().doing().get().orElseThrow();

        assertThat(german.order()).isEqualTo(order.order());
    }

    private int answers() {
        return learner().record().lately().size();
    }

    private static String right(final PracticeModel model) {
        final Problem problem = (Problem) model.exercise().orElseThrow();
        return problem.worked().value(problem.asked()).orElseThrow() + " A";
    }
}
