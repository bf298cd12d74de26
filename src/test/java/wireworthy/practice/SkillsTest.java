package wireworthy.practice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import wireworthy.rules.Skill;

class SkillsTest {
    private static final double SIXTH = 5e-7;

    private final List<Answered> history = new ArrayList<>();

    private void drop(final long day, final boolean right) {
        drop(day, right, false, "voltage-drop/aisle-strips-drop");
    }

    private void drop(
            final long day, final boolean right, final boolean aided, final String template) {
        history.add(
                new Answered(
                        Skill.DROP,
                        new Moment(day, day * 86_400),
                        right,
                        aided,
                        false,
                        0,
                        template,
                        history.size()));
    }

    private double chance(final long day) {
        return Skills.of(history).chance(Skill.DROP, day, 0);
    }

    private double byFormula(final long day) {
        return Skills.of(history).byFormula(Skill.DROP, day, 0);
    }

    private SkillState state(final long day) {
        return Skills.of(history).state(Skill.DROP, day);
    }

    @Test
    void foldsThePublishedCheckSequence() {
        final long[] days = {0, 0, 0, 1, 8, 8};
        final boolean[] right = {false, true, true, true, true, false};
        final double[] before = {.289050, .260818, .575207, .732227, .753964, .834678};
        for (int i = 0; i < days.length; i++) {
            assertThat(byFormula(days[i]))
                    .as("before answer %d", i)
                    .isCloseTo(before[i], within(SIXTH));
            drop(days[i], right[i]);
        }

        assertThat(byFormula(8)).isCloseTo(.765124, within(SIXTH));
        assertThat(byFormula(38)).isCloseTo(.483618, within(SIXTH));
        assertThat(Skills.of(history).byFormula(Skill.DERATING, 8, 0))
                .isCloseTo(.331798, within(SIXTH));
    }

    @Test
    void tracesThePublishedWorkedExample() {
        final boolean[] right = {false, true, true, false, false};
        final double[] known = {.280000, .618824, .865312, .736009, .560010};
        double traced = Tracing.START;
        for (int i = 0; i < right.length; i++) {
            traced = Tracing.after(traced, right[i]);

            assertThat(traced).as("after answer %d", i).isCloseTo(known[i], within(SIXTH));
        }
    }

    @Test
    void theOwnSlopeIsFlatterForOneWhoDoesOtherwiseThanTold() {
        Slope slope = Slope.UNKNOWN;
        for (int i = 0; i < 40; i++) {
            slope = slope.with(2, i % 3 > 0);
        }

        assertThat(Slope.UNKNOWN.chance(2)).isBetween(.86, .88);
        assertThat(slope.mean()).isLessThan(.8);
        assertThat(slope.chance(2)).isBetween(2 / 3.0, .83);
        assertThat(slope.chance(0)).isEqualTo(.5);
        assertThat(slope.variance()).isLessThan(Slope.UNKNOWN.variance());
    }

    @Test
    void harderProblemsAreLessLikelyRight() {
        final Skills none = Skills.of(List.of());

        assertThat(none.chance(Skill.DROP, 0, 1))
                .isLessThan(none.chance(Skill.DROP, 0, 0))
                .isLessThan(none.chance(Skill.DROP, 0, -1));
    }

    @Test
    void isUntriedThenLooseThenSnug() {
        assertThat(state(0)).isEqualTo(SkillState.UNTRIED);
        drop(0, true);
        assertThat(state(0)).isEqualTo(SkillState.LOOSE);
        rights(0, 5);
        assertThat(chance(0)).isGreaterThan(.85);
        assertThat(state(0)).isEqualTo(SkillState.SNUG);
    }

    @Test
    void answersAfterHelpDoNotMakeItSnug() {
        for (int i = 0; i < 8; i++) {
            drop(0, true, true, "a/b");
        }

        assertThat(state(0)).isEqualTo(SkillState.LOOSE);
    }

    @Test
    void isTightOnlyWithTwoTemplatesAndTwoDays() {
        rights(0, 6);
        rights(1, 3);
        assertThat(state(1)).as("one template").isEqualTo(SkillState.SNUG);

        drop(1, true, false, "voltage-drop/another");
        assertThat(state(1)).isEqualTo(SkillState.TIGHT);
    }

    @Test
    void isDueAfterADayAndHoldsAgainAfterTheReview() {
        rights(0, 6);
        assertThat(state(0)).isEqualTo(SkillState.SNUG);
        assertThat(state(1)).as("due after a day").isEqualTo(SkillState.DUE);

        rights(1, 1);
        assertThat(state(1)).isEqualTo(SkillState.SNUG);
        assertThat(Skills.of(history).due(Skill.DROP)).as("then after three").isEqualTo(4);
    }

    @Test
    void aReviewThatGoesWrongWorksItLooseUntilItIsRightWithoutHelp() {
        rights(0, 6);
        rights(1, 4);
        assertThat(state(4)).isEqualTo(SkillState.DUE);

        drop(4, false);
        assertThat(chance(4)).as("still likely").isGreaterThan(.85);
        assertThat(state(4)).as("wrong").isEqualTo(SkillState.WORKED_LOOSE);
        drop(4, true, true, "voltage-drop/aisle-strips-drop");
        assertThat(state(4)).as("with help").isEqualTo(SkillState.WORKED_LOOSE);
        rights(4, 2);
        assertThat(state(4)).as("right again").isEqualTo(SkillState.SNUG);
        assertThat(Skills.of(history).since(Skill.DROP)).as("snug since").isZero();
    }

    @Test
    void worksLooseWhenAnswersGoWrong() {
        rights(0, 6);
        for (int i = 0; i < 5; i++) {
            drop(0, false);
        }

        assertThat(state(0)).isEqualTo(SkillState.WORKED_LOOSE);
    }

    @Test
    void isTightOnlyWhileThreeOfTheLastFourAreRight() {
        rights(0, 6);
        rights(1, 3);
        drop(1, true, false, "voltage-drop/another");
        drop(1, false);
        drop(1, false);
        rights(1, 1);

        assertThat(state(1)).isEqualTo(SkillState.SNUG);
    }

    @Test
    void comesBackAfterOneThreeSevenSixteenThirtyFiveAndSixtyDays() {
        rights(0, 6);
        long day = 0;
        for (final int gap : new int[] {1, 3, 7, 16, 35, 60, 60}) {
            day += gap;
            assertThat(Skills.of(history).due(Skill.DROP)).isEqualTo(day);
            rights(day, 1);
        }
    }

    @Test
    void isLeftForAnotherDayOnceEightTriesCannotHoldThreeRightRunning() {
        for (int i = 0; i < 6; i++) {
            drop(0, i % 3 == 0);
        }
        assertThat(Skills.of(history).stuck(Skill.DROP, 0)).as("six tries").isFalse();
        drop(0, false);
        assertThat(Skills.of(history).stuck(Skill.DROP, 0)).as("seven tries").isTrue();
        assertThat(Skills.of(history).stuck(Skill.DROP, 1)).as("tomorrow").isFalse();

        drop(1, false);
        assertThat(Skills.of(history).stuck(Skill.DROP, 1)).as("a fresh start").isFalse();
    }

    @Test
    void aClockSetBackUndoesNothing() {
        rights(9, 4);

        assertThat(chance(2)).isEqualTo(chance(9));
        rights(2, 1);
        assertThat(Skills.of(history).lastDay(Skill.DROP)).isEqualTo(9);
    }

    private void rights(final long day, final int times) {
        for (int i = 0; i < times; i++) {
            drop(day, true);
        }
    }
}
