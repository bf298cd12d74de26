package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wireworthy.lessons.Block;
import wireworthy.marking.Mark;
import wireworthy.practice.LineState;
import wireworthy.practice.Problem;
import wireworthy.record.Answer;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.rules.Skill;
import wireworthy.working.Solver;

/** The working line by line, without a window: what is marked, what is aided, what is kept. */
class LinesModelTest {
    private static final Ref LOOP = Ref.circuit(Quantity.LOOP_LENGTH);
    private static final Ref RESISTANCE = Ref.circuit(Quantity.LOOP_RESISTANCE);
    private static final Ref DROP = Ref.circuit(Quantity.DROP);

    @TempDir private Path folder;
    private Path file;
    private PracticeModel model;
    private String bank = "";

    @BeforeEach
    void everyLineIsTheLearnersOwn() {
        file = folder.resolve("practice.sqlite");
        for (final Skill skill :
                List.of(Skill.OUT_AND_BACK_LENGTH, Skill.RESISTANCE_OF_A_CABLE, Skill.DROP)) {
            Evenings.right(file, skill, 1);
        }
        open("voltage-drop", "aisle-strips-drop");
    }

    private static FigureModel figure(final PracticeModel of) {
        return of.figure().orElseThrow();
    }

    private void open(final String from, final String template) {
        open(from, template, Evenings.CLOCK);
    }

    private void open(final String from, final String template, final Clock clock) {
        bank = from;
        final Learner learner = new Learner(file, new Solver(), clock);
        learner.want(List.of(new Block.Questions(1, bank, List.of(template))));
        model = new PracticeModel(learner);
        model.next();
        figure(model).lineByLine();
    }

    private LinesModel lines() {
        return figure(model).lines();
    }

    private LineRow row(final Ref ref) {
        return lines().rowFor(ref).orElseThrow();
    }

    private Problem problem() {
        return figure(model).exercise();
    }

    private double right(final Ref ref) {
        return problem().worked().value(ref).orElseThrow();
    }

    private Mark fill(final Ref ref, final double si) {
        row(ref).typed().set("%.6g".formatted(si));
        figure(model).leave(row(ref));
        return row(ref).mark().get().orElseThrow();
    }

    private List<Answer> kept() {
        return Evenings.kept(file, bank, problem().seed());
    }

    @Test
    void everyAnswerIsKeptUnderTheSkillOfItsLine() {
        fill(LOOP, right(LOOP));
        fill(RESISTANCE, right(RESISTANCE));
        fill(DROP, right(DROP));

        assertThat(kept())
                .extracting(Answer::asked, Answer::skill, Answer::sound, Answer::aided)
                .containsExactly(
                        tuple(
                                Optional.of(Quantity.LOOP_LENGTH),
                                Skill.OUT_AND_BACK_LENGTH,
                                Optional.of(true),
                                false),
                        tuple(
                                Optional.of(Quantity.LOOP_RESISTANCE),
                                Skill.RESISTANCE_OF_A_CABLE,
                                Optional.of(true),
                                false),
                        tuple(Optional.of(Quantity.DROP), Skill.DROP, Optional.of(true), false));
    }

    @Test
    void noMomentToStopComesBeforeTheLastLine() {
        final Duration longEnough = Duration.ofMinutes(13);
        open("voltage-drop", "aisle-strips-drop", Clock.offset(Evenings.CLOCK, longEnough));
        fill(LOOP, right(LOOP));
        fill(RESISTANCE, right(RESISTANCE));
        assertThat(model.mayEnd().get()).isEmpty();

        fill(DROP, right(DROP));
        assertThat(model.mayEnd().get()).startsWith("13 minutes");
    }

    @Test
    void theAnswerIsKeptBeforeItsMarkIsShown() {
        final List<Integer> onRecord = new java.util.ArrayList<>();
        row(LOOP).mark().subscribe(mark -> onRecord.add(kept().size()));
        fill(LOOP, right(LOOP));

        assertThat(onRecord).containsExactly(0, 1);
    }

    @Test
    void theFirstFigureCountsAndACorrectionIsAided() {
        fill(LOOP, right(LOOP) / 2);
        fill(LOOP, right(LOOP));

        assertThat(kept())
                .extracting(Answer::sound, Answer::aided)
                .containsExactly(tuple(Optional.of(false), false), tuple(Optional.of(true), true));
    }

    @Test
    void leavingALineUnchangedKeepsNothingMore() {
        fill(LOOP, right(LOOP));
        figure(model).leave(row(LOOP));

        assertThat(kept()).hasSize(1);
    }

    @Test
    void aLineWorkedFromAWrongOneFollowsAndItsSkillCountsAsRight() {
        fill(LOOP, right(LOOP) / 2);
        final Mark followed = fill(RESISTANCE, right(RESISTANCE) / 2);

        assertThat(LineVerdict.of(followed)).isEqualTo(LineVerdict.FOLLOWS);
        assertThat(kept()).extracting(Answer::sound).last().isEqualTo(Optional.of(true));
    }

    @Test
    void correctingALineJudgesTheLaterOnesAgain() {
        fill(LOOP, right(LOOP) / 2);
        fill(RESISTANCE, right(RESISTANCE) / 2);
        fill(LOOP, right(LOOP));

        assertThat(LineVerdict.of(row(RESISTANCE).mark().get().orElseThrow()))
                .isEqualTo(LineVerdict.UNSOUND);
    }

    @Test
    void helpComesOneLevelAtATimeAndMakesThatLineAided() {
        lines().help(row(RESISTANCE));
        assertThat(row(RESISTANCE).help()).hasSize(1);
        fill(LOOP, right(LOOP));
        fill(RESISTANCE, right(RESISTANCE));

        assertThat(kept()).extracting(Answer::aided).containsExactly(false, true);
    }

    @Test
    void helpEndsWithTheLineWorked() {
        for (int i = 0; i < 6; i++) {
            lines().help(row(LOOP));
        }

        assertThat(row(LOOP).help()).hasSize(4).last().asString().startsWith("Worked: 2 ×");
        assertThat(row(LOOP).nextHelp()).isEmpty();
    }

    @Test
    void helpWithNumbersAlsoTellsTheLinesTheyComeFrom() {
        for (int i = 0; i < 3; i++) {
            lines().help(row(RESISTANCE));
        }
        fill(LOOP, right(LOOP));

        assertThat(kept()).extracting(Answer::aided).containsExactly(true);
    }

    @Test
    void anExplanationMakesEveryLineBeforeItAided() {
        fill(RESISTANCE, right(RESISTANCE) / 2);
        fill(LOOP, right(LOOP));
        fill(DROP, right(DROP));

        assertThat(kept()).extracting(Answer::aided).containsExactly(false, true, false);
    }

    @Test
    void theAnswerStandsForTheMainSkillUnlessItsLineWasAnswered() {
        open("voltage-drop", "pump-drop-by-the-reel");
        fill(DROP, right(DROP));
        assertThat(kept()).extracting(Answer::skill).containsExactly(problem().skill());

        model.twin();
        fill(RESISTANCE, right(RESISTANCE));
        fill(DROP, right(DROP));
        assertThat(kept())
                .extracting(Answer::skill)
                .containsExactly(Skill.RESISTANCE_OF_A_CABLE, Skill.DROP);
    }

    @Test
    void aShownLineWaitsForTheLinesWhoseFiguresItTells() {
        file = folder.resolve("new.sqlite");
        Evenings.right(file, Skill.OUT_AND_BACK_LENGTH, 1);
        open("voltage-drop", "aisle-strips-drop");
        assertThat(row(RESISTANCE).state().get()).isEqualTo(LineState.SHOWN);
        assertThat(row(RESISTANCE).waitsFor().get()).containsExactly(1);

        fill(LOOP, right(LOOP));
        assertThat(row(RESISTANCE).waitsFor().get()).isEmpty();
    }

    @Test
    void aFoldedLineCanBeUnfoldedAndAskedAndCountsUnaided() {
        file = folder.resolve("firm.sqlite");
        Evenings.right(file, Skill.OUT_AND_BACK_LENGTH, 6);
        open("voltage-drop", "aisle-strips-drop");
        assertThat(row(LOOP).state().get()).isEqualTo(LineState.FOLDED);

        lines().ask(row(LOOP));
        fill(LOOP, right(LOOP));
        assertThat(kept()).extracting(Answer::aided).containsExactly(false);
    }

    @Test
    void whatIsTypedStaysWhenTheRuleIsLookedAtAndTheLinesAreOpenedAgain() {
        row(LOOP).typed().set("14.");
        figure(model).showRule();
        figure(model).lineByLine();

        assertThat(row(LOOP).typed().get()).isEqualTo("14.");
        fill(LOOP, right(LOOP));
        assertThat(kept()).extracting(Answer::aided).containsExactly(true);
    }

    /** Divided the wrong way round, and then ten times the result. */
    @Test
    void aSumOfOneLineIsAskedForOnceMore() {
        open("current", "warming-mat-current-24");
        final Ref current = problem().asked();
        final double once = Math.pow(right(current), -1);
        figure(model).typed().set("%.6g".formatted(once * 10));
        figure(model).answer();
        assertThat(figure(model).beside().get()).isEqualTo(Beside.SETTLING);
        assertThat(figure(model).mark().get().orElseThrow().asksAgain()).isTrue();

        figure(model).again();
        figure(model).typed().set("%.6g".formatted(once));
        figure(model).answer();
        final Mark now = figure(model).mark().get().orElseThrow();
        assertThat(now.explained()).isNotEmpty();
        assertThat(figure(model).beside().get()).isEqualTo(Beside.MARKED);
        assertThat(kept()).extracting(Answer::aided).containsExactly(false, true);
    }

    /** One way of the cable, and then ten times the result. */
    @Test
    void theLineAskedForSettlesWhichTwoSlipsItWas() {
        figure(model).typed().set("%.6g".formatted(right(DROP) / 2 * 10));
        figure(model).answer();
        assertThat(figure(model).beside().get()).isEqualTo(Beside.SETTLING);
        final LineRow asked = figure(model).settlingLine().orElseThrow();

        figure(model).askSettlingLine();
        assertThat(figure(model).beside().get()).isEqualTo(Beside.LINES);
        assertThat(asked.state().get()).isEqualTo(LineState.ASKED);
        fill(asked.ref(), right(asked.ref()) / 2);

        final Mark now = figure(model).mark().get().orElseThrow();
        assertThat(now.explained()).extracting(each -> each.ids().get(0)).contains("power-of-ten");
        assertThat(asked.mark().get().orElseThrow().explained()).isNotEmpty();
        assertThat(figure(model).settlingLine()).isEmpty();
        assertThat(kept())
                .extracting(Answer::asked, Answer::aided)
                .containsExactly(
                        tuple(Optional.of(Quantity.DROP), false),
                        tuple(Optional.of(asked.ref().quantity()), false),
                        tuple(Optional.of(Quantity.DROP), true));
        assertThat(figure(model).comparison().partsAt()).isPresent();
    }
}
