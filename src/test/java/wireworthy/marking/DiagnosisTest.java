package wireworthy.marking;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import wireworthy.marking.Tallies.Count;

/** What simulated learners are told at every template of the built-in banks. */
class DiagnosisTest {
    private static final int PROBLEMS = 3;

    private static Tallies trial = new Tallies();

    @BeforeAll
    static void answerEveryTemplate() {
        trial = DiagnosisTrial.over(PROBLEMS).tallies();
        System.out.print(trial.table());
    }

    private static void atLeast(final Count count, final double share) {
        assertThat(trial.looked(count)).isGreaterThan(100);
        assertThat(trial.share(count)).as(() -> trial.faults(count)).isGreaterThanOrEqualTo(share);
    }

    private static void atMost(final Count count, final double share) {
        assertThat(trial.looked(count)).isGreaterThan(100);
        assertThat(trial.share(count)).as(() -> trial.faults(count)).isLessThanOrEqualTo(share);
    }

    @Test
    void aSingleSlipIsNamedFirst() {
        atLeast(Count.SINGLE, 0.99);
    }

    @Test
    void aSingleSlipIsNeverMarkedRight() {
        atMost(Count.SINGLE_RIGHT, 0);
    }

    @Test
    void aSlipAskedAboutFirstIsSettledByTheLineAskedFor() {
        atLeast(Count.SINGLE_ASKED, 0.99);
    }

    @Test
    void twoSlipsAreSettledByTheLineAskedFor() {
        atLeast(Count.PAIR, 0.90);
        atLeast(Count.PAIR_THREE, 0.90);
        atLeast(Count.POINT, 0.90);
        atLeast(Count.POINT_LINE, 0.90);
    }

    @Test
    void twoSlipsAreSettledOverTwoProblems() {
        atLeast(Count.PAIR_TWICE, 0.97);
        atLeast(Count.POINT_TWICE, 0.97);
    }

    @Test
    void aFigureOfNoSlipIsSeldomExplained() {
        atMost(Count.NO_SLIP, 0.015);
        atMost(Count.NO_SLIP_FOUR, 0.015);
        atMost(Count.NO_SLIP_LINE, 0.015);
    }

    @Test
    void threeFiguresKeptOnTheWayAreSound() {
        atLeast(Count.ROUNDED, 1);
    }

    @Test
    void whatCouldStartAFireIsSaidFirst() {
        atLeast(Count.DANGER, 1);
    }

    @Test
    void explanationsAreShort() {
        atMost(Count.LONG, 0);
    }
}
