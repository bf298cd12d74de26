package wireworthy.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wireworthy.rules.Quantity;

/** How long a fuse takes at a current, as a question. */
class FuseOpeningTest {
    @ParameterizedTest
    @CsvSource({
        "10 A, 20 A, blade, 0.15, 5",
        "10 A, 25 A, blade, 0.04, 5",
        "50 A, 100 A, maxi-blade, 2, 60",
        "100 A, 600 A, strip-51, 0.1, 1"
    })
    void betweenTheLimitsOfItsSeries(
            final String fuse,
            final String current,
            final String series,
            final double shortest,
            final double longest) {
        final Worked worked = Asking.worked(question(fuse, current, series));
        assertThat(Asking.found(worked, Quantity.FUSE_TIME_SHORTEST)).isEqualTo(shortest);
        assertThat(Asking.found(worked, Quantity.FUSE_TIME_LONGEST)).isEqualTo(longest);
        assertThat(Telling.lines(worked))
                .allSatisfy(line -> assertThat(line.source().orElseThrow().text()).contains("ISO"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "10 A | 12 A  | blade | fuse-time-longest  | the fuse need not open",
                "10 A | 200 A | blade | fuse-time-shortest | the fuse may open at once",
                "10 A | 200 A | r10   | fuse-time-longest  | no times are kept here"
            })
    void whereTheTableSaysNothingTheQuestionIsTold(
            final String fuse,
            final String current,
            final String series,
            final String asked,
            final String why) {
        final Worked worked = Asking.worked(question(fuse, current, series, "\"" + asked + "\", "));
        final Quantity quantity = Quantity.of(asked).orElseThrow();
        assertThatThrownBy(() -> Asking.found(worked, quantity)).hasMessageContaining(why);
    }

    /** A drop is asked for besides, so that there is always something to work. */
    private static String question(
            final String fuse, final String current, final String series, final String asked) {
        return ("{\"given\": {\"fuse\": \"%s\", \"short-circuit-current\": \"%s\","
                        + " \"fuse-series\": \"%s\", \"section\": \"2.5 mm2\","
                        + " \"one-way-length\": \"1 m\"}, \"find\": [%s\"loop-resistance\"]}")
                .formatted(fuse, current, series, asked);
    }

    private static String question(final String fuse, final String current, final String series) {
        return ("{\"given\": {\"fuse\": \"%s\", \"short-circuit-current\": \"%s\","
                        + " \"fuse-series\": \"%s\"},"
                        + " \"find\": [\"fuse-time-shortest\", \"fuse-time-longest\"]}")
                .formatted(fuse, current, series);
    }

    @Test
    void withoutAFuseItAsksForOne() {
        assertThatThrownBy(
                        () ->
                                Asking.worked(
                                        "{\"given\": {\"short-circuit-current\": \"90 A\"},"
                                                + " \"find\": \"fuse-time-longest\"}"))
                .hasMessageContaining("fuse");
    }
}
