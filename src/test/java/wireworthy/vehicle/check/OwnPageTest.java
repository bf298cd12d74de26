package wireworthy.vehicle.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wireworthy.marking.Mark;

/** A page goes by one figure for copper: what is worked on from there is judged by it. */
class OwnPageTest {
    private static Mark last(final String volts, final String given, final String answers) {
        final String circuit =
                "{'name': 'C', 'given': {'loads': [{'name': 'pump', %s, 'answers': {%s}}"
                        .formatted(given, answers);
        final String supply = "{'given': {'supply-voltage': '%s'}}".formatted(volts);
        final CheckedCircuit checked =
                Checked.check(
                                Checked.read(
                                        supply.replace('\'', '"'),
                                        "{}",
                                        circuit.replace('\'', '"')))
                        .circuits()
                        .get(0);
        return checked.marks().get(checked.marks().size() - 1);
    }

    /** 6 A over 5 m of 2.5 mm2: 0.4272 V with 0.0178; 4 A: 0.28 V with 0.0175. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "24 V | 144 W | 0.427 V | 0.43 % | 0.43 % has the number of the drop, 0.4272 V. Divide",
                "24 V | 144 W | 0.427 V | 0.427 % | 0.427 % has the number of the drop, 0.4272 V.",
                "12 V | 48 W | 0.280 V | 1.2 % | 1.2 % comes out with 24 V as the supply voltage",
                "12 V | 48 W | 0.280 V | 1.17 % | 1.17 % comes out with 24 V as the supply voltage",
            })
    void whatIsWorkedOnFromAFigureByAnotherCopperIsDiagnosedByIt(
            final String volts,
            final String power,
            final String drop,
            final String percent,
            final String said) {
        final String given =
                "'power': '%s'}], 'one-way-length': '5 m', 'section': '2.5 mm2'}".formatted(power);
        final Mark mark =
                last(volts, given, "'drop': '%s', 'drop-percent': '%s'".formatted(drop, percent));
        assertThat(mark.isSound()).isFalse();
        assertThat(mark.explanation()).startsWith(said);
    }

    /** 0.190 V goes by 0.0178; 0.190 / 24 are 0.79 %, of which nothing is rounded off. */
    @Test
    void whatIsWorkedOnFromItIsNotCalledRounded() {
        final String given = "'power': '48 W'}], 'one-way-length': '4 m', 'section': '1.5 mm2'}";
        assertThat(last("24 V", given, "'drop': '0.190 V', 'drop-percent': '0.79 %'").explanation())
                .isEqualTo("0.79 % is sound, worked on from your 0.190 V above.");
    }

    /** 0.4667 %. */
    @Test
    void aPercentageMayHaveOneDigit() {
        final String given = "'power': '2.4 W'}], 'one-way-length': '6 m', 'section': '0.75 mm2'}";
        final Mark mark = last("12 V", given, "'drop': '0.056 V', 'drop-percent': '0.5 %'");
        assertThat(mark.isSound()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"2.75 A, true", "2.8 A, true", "0.287 A, false", "5.5 A, false"})
    void halfTheAmpsMayComeOfRunningHalfTheTime(final String own, final boolean said) {
        final String given = "'power': '66 W'}], 'one-way-length': '4 m', 'section': '4 mm2'}";
        assertThat(last("12 V", given, "'circuit-current': '" + own + "'").explanation())
                .satisfies(
                        words ->
                                assertThat(words.contains("it runs half the time"))
                                        .isEqualTo(said));
    }
}
