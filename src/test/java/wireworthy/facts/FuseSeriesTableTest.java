package wireworthy.facts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FuseSeriesTableTest {
    private static final FuseSeries BLADE = FuseSeriesTable.named("blade");

    @Test
    void theSeriesStandInTheirOrder() {
        assertThat(FuseSeriesTable.all())
                .extracting(FuseSeries::id)
                .containsExactly(
                        "blade", "mini-blade", "maxi-blade", "strip-30", "strip-51", "r10");
        assertThat(FuseSeriesTable.risingToMain())
                .extracting(FuseSeries::id)
                .containsExactly("blade", "maxi-blade", "strip-30", "strip-51");
    }

    @ParameterizedTest
    @CsvSource({
        "blade, 1, 40, 13",
        "mini-blade, 2, 30, 10",
        "maxi-blade, 20, 100, 10",
        "strip-30, 30, 200, 11",
        "strip-51, 40, 500, 15",
        "r10, 0.315, 10, 16"
    })
    void aSeriesRunsFromItsSmallestToItsLargestRating(
            final String id, final double smallest, final double largest, final int count) {
        assertThat(FuseSeriesTable.named(id).ratings())
                .isSorted()
                .doesNotHaveDuplicates()
                .hasSize(count)
                .startsWith(smallest)
                .endsWith(largest);
    }

    @Test
    void bladesHaveTheirVoltagesAndBreakingCapacityStripsLeaveThemToTheMaker() {
        assertThat(BLADE.voltageRatings()).containsExactly(32.0, 58.0);
        assertThat(BLADE.breakingCapacity()).hasValue(1000);
        assertThat(FuseSeriesTable.named("strip-51").voltageRatings()).isEmpty();
        assertThat(FuseSeriesTable.named("strip-51").breakingCapacity()).isEmpty();
    }

    @ParameterizedTest(name = "{0} A: at or above {1}, at or below {2}, below {3}, nearest {4}")
    @CsvSource({
        "10, 10, 10, 7.5, 10",
        "10.000000001, 10, 10, 7.5, 10",
        "10.1, 15, 10, 10, 10",
        "12.5, 15, 10, 10, 10",
        "12.6, 15, 10, 10, 15",
        "0.5, 1, , , 1",
        "41, , 40, 40, 40",
        "NaN, , , , "
    })
    void aRatingIsFoundAboveBelowAndBeside(
            final double amps,
            final Double atOrAbove,
            final Double atOrBelow,
            final Double below,
            final Double nearest) {
        assertThat(BLADE.atOrAbove(amps)).isEqualTo(perhaps(atOrAbove));
        assertThat(BLADE.atOrBelow(amps)).isEqualTo(perhaps(atOrBelow));
        assertThat(BLADE.below(amps)).isEqualTo(perhaps(below));
        assertThat(BLADE.nearest(amps)).isEqualTo(perhaps(nearest));
    }

    private static OptionalDouble perhaps(final Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    @Test
    void aFloorThatIsARatingButForRoundingTakesThatRating() {
        assertThat(BLADE.atOrAbove(0.1 * 3 / 0.06)).hasValue(5);
        assertThat(BLADE.atOrAbove(8 * 1.25)).hasValue(10);
    }

    @Test
    void knowsItsOwnRatings() {
        assertThat(BLADE.holds(7.5)).isTrue();
        assertThat(BLADE.holds(7.500000000001)).isTrue();
        assertThat(BLADE.holds(7.6)).isFalse();
    }

    @Test
    void anUnknownSeriesIsAnsweredWithTheKnownOnes() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FuseSeriesTable.named("glass"))
                .withMessageContaining("glass")
                .withMessageContaining("maxi-blade");
    }
}
