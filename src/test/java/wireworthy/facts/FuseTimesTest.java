package wireworthy.facts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FuseTimesTest {
    @ParameterizedTest
    @CsvSource({
        "blade, 1.35, 0.75, 600",
        "blade, 2, 0.15, 5",
        "blade, 6, 0.02, 0.1",
        "mini-blade, 3.5, 0.04, 0.5",
        "maxi-blade, 2, 2, 60",
        "strip-30, 6, 0.1, 1",
        "strip-51, 3.5, 0.3, 5"
    })
    void atAShareOfTheTableItsRowHolds(
            final String series, final double share, final double shortest, final double longest) {
        final FuseTimes times = FuseTimes.of(series);
        assertThat(times.shortest(share)).hasValue(shortest);
        assertThat(times.longest(share)).hasValue(longest);
    }

    @ParameterizedTest
    @CsvSource({
        "1.5, 0.25, 600",
        "1.99, 0.15, 50",
        "5, 0.02, 0.5",
        // As near to a row as a sum comes: 0.1 + 0.2 of anything.
        "2.0000000000000004, 0.15, 5"
    })
    void betweenTwoRowsTheOuterLimitsHold(
            final double share, final double shortest, final double longest) {
        assertThat(FuseTimes.of("blade").shortest(share)).hasValue(shortest);
        assertThat(FuseTimes.of("blade").longest(share)).hasValue(longest);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 1, 1.1, 1.34})
    void aLittleOverloadNeedNotOpenIt(final double share) {
        assertThat(FuseTimes.of("blade").longest(share)).isEmpty();
    }

    @Test
    void pastTheTableItIsNoSlowerButMayOpenAtOnce() {
        assertThat(FuseTimes.of("blade").longest(40)).hasValue(0.1);
        assertThat(FuseTimes.of("blade").shortest(40)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"blade", "mini-blade", "maxi-blade", "strip-30", "strip-51"})
    void theMoreItCarriesTheSoonerItOpens(final String series) {
        final FuseTimes times = FuseTimes.of(series);
        final double[] longest =
                IntStream.range(140, 900)
                        .mapToDouble(share -> times.longest(share / 100.0).orElseThrow())
                        .toArray();
        for (int i = 1; i < longest.length; i++) {
            assertThat(longest[i]).isLessThanOrEqualTo(longest[i - 1]);
        }
    }

    @Test
    void theirSourceIsNamedAndUnconfirmed() {
        assertThat(FuseTimes.of("blade").source().text()).contains("ISO 8820-3", "unconfirmed");
        assertThat(FuseTimes.of("r10").rows()).isEmpty();
    }
}
