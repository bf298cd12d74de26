package wireworthy.vehicle.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wireworthy.marking.Mark;

/** What is said of a builder's own figure, in words that help on and don't frighten. */
class OwnWordsTest {
    private static List<Mark> marks(
            final String volts, final String loads, final String cable, final String answers) {
        final String circuit =
                "{'name': 'C', 'given': {'loads': [%s], %s}, 'answers': {%s}}"
                        .formatted(loads, cable, answers);
        final String supply = "{'given': {'supply-voltage': '%s'}}".formatted(volts);
        return Checked.check(
                        Checked.read(supply.replace('\'', '"'), "{}", circuit.replace('\'', '"')))
                .circuits()
                .get(0)
                .marks();
    }

    private static Mark last(
            final String volts, final String loads, final String cable, final String answers) {
        final List<Mark> marks = marks(volts, loads, cable, answers);
        return marks.get(marks.size() - 1);
    }

    private static String load(final String what) {
        return "{'name': 'lamp', " + what + "}";
    }

    private static final String SHORT = "'one-way-length': '2 m', 'section': '1.5 mm2'";
    private static final String RUN = "'one-way-length': '5 m', 'section': '1.5 mm2'";

    /** 1.95 A lose 0.0894 V, 0.745 %; 2.03 A 0.0931 V, 0.776 %; 2 A 0.0917 V, 0.764 %. */
    @ParameterizedTest
    @CsvSource({
        "1.95 A, 0.76 %",
        "1.95 A, 0.75 %",
        "2.03 A, 0.76 %",
        "2.03 A, 0.75 %",
        "2 A, 0.76 %",
        "2 A, 0.8 %",
    })
    void whatGoesOnFromARoundedFigureIsSoundAsItStandsAndInFull(
            final String current, final String percent) {
        final String own = "'drop': '0.09 V', 'drop-percent': '%s'".formatted(percent);
        assertThat(marks("12 V", load("'current': '" + current + "'"), SHORT, own))
                .hasSize(2)
                .allMatch(Mark::isSound);
    }

    @ParameterizedTest
    @CsvSource({"2 A, 0.71 %", "1.98 A, 0.70 %", "2 A, 0.85 %"})
    void butNotWhatNeitherGives(final String current, final String percent) {
        final String own = "'drop': '0.09 V', 'drop-percent': '%s'".formatted(percent);
        assertThat(last("12 V", load("'current': '" + current + "'"), SHORT, own).isSound())
                .isFalse();
    }

    /** 4.583 A, and a floor of 5.73 A from it; 192.5 Wh a day. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "'circuit-current': '4.6 A', 'fuse-floor': '5.75 A'",
                "'circuit-current': '4.6 A', 'fuse-floor': '5.8 A'",
                "'circuit-current': '4.6 A', 'fuse-floor': '5.7 A'",
                "'circuit-current': '4.6 A', 'daily-energy': '193.2 Wh'",
                "'circuit-current': '4.6 A', 'drop': '0.21 V', 'drop-percent': '1.8 %'",
            })
    void thatHoldsForFuseFloorsAndWattHoursToo(final String own) {
        assertThat(marks("12 V", load("'power': '55 W', 'hours-a-day': '3.5 h'"), SHORT, own))
                .allMatch(Mark::isSound);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.4 %", "0.42 %", "0.41 %"})
    void whatGoesOnFromAnUnsoundFigureFollowsWithItsRounding(final String percent) {
        final Mark mark =
                last(
                        "12 V",
                        load("'power': '24 W'"),
                        SHORT,
                        "'drop': '0.05 V', 'drop-percent': '" + percent + "'");
        assertThat(mark.follows()).isTrue();
        assertThat(mark.explanation()).contains("above; with that, it is right");
    }

    @ParameterizedTest
    @CsvSource({"55 W, 5 A, 4.583 A", "17 W, 1 A, 1.417 A"})
    void aFigureOfOneDigitIsSaidToBeCoarseRatherThanASlip(
            final String power, final String own, final String right) {
        final String load = load("'power': '" + power + "'");
        assertThat(last("12 V", load, RUN, "'circuit-current': '" + own + "'").explanation())
                .startsWith(own + " is " + right + ", rounded to one digit.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'current': '650 mA' | 'drop': '0.75 V' | 0.75 V is ten times too large: the decimal point is one place off. Milli means a thousandth",
                "'current': '650 mA' | 'circuit-current': '6.5 A' | ten times too large: the decimal point is one place off.",
                "'current': '650 mA' | 'circuit-current': '0.065 A' | ten times too small: the decimal point is one place off.",
                "'power': '24 W' | 'drop': '0.0229 V' | ten times too small: the decimal point is one place off. It could also come of: the mains",
                "'power': '24 W' | 'drop': '2.29 V' | ten times too large: the decimal point is one place off.",
                "'power': '24 W' | 'drop': '22.9 V' | a hundred times too large. The decimal point looks two places off;",
                "'power': '24 W' | 'drop': '229 V' | a thousand times too large. That is what a milli makes: 1000 mA is 1 A",
                "'power': '24 W' | 'circuit-current': '2 mA' | a thousand times too small. That is what a milli makes",
            })
    void aPowerOfTenIsNamedPlainlyAndFirst(final String load, final String own, final String said) {
        assertThat(last("12 V", load(load), RUN, own).explanation())
                .contains(said)
                .doesNotContain("more than one way");
    }

    /** 0.5 A rounds to 1 A only for those who round it off; 1 A comes out just so. */
    @Test
    void inOneDigitOnlyWhatComesOutIsNamed() {
        final String cable = "'one-way-length': '3 m', 'section': '1.5 mm2'";
        assertThat(last("12 V", load("'power': '24 W'"), cable, "'circuit-current': '1 A'"))
                .extracting(Mark::explanation)
                .asString()
                .startsWith("1 A comes out when the watts are divided by 24 V; here it is 12 V.")
                .doesNotContain("volts divided by the watts");
    }

    /** 350 W at 12 V are 29.2 A: 2.9 A has its digits, 3 A may have them. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3 A | 3 A is about ten times too small; it may be that the decimal point is one place off.",
                "2.9 A | 2.9 A is ten times too small: the decimal point is one place off.",
                "2.92 A | 2.92 A is ten times too small: the decimal point is one place off.",
            })
    void oneDigitDoesNotTellThatTheDecimalPointMoved(final String own, final String said) {
        final String cable = "'one-way-length': '1 m', 'section': '10 mm2'";
        final String load = load("'power': '350 W'");
        assertThat(last("12 V", load, cable, "'circuit-current': '" + own + "'").explanation())
                .contains(said);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "24 V | {'name': 'a', 'power': '300 W'} | 'circuit-current': '25 A' | 25 A comes out when the watts are divided by 12 V; here it is 24 V.",
                "24 V | {'name': 'a', 'power': '300 W'} | 'circuit-current': '6.25 A' | 6.25 A comes out when the watts are divided by 48 V; here it is 24 V.",
                "48 V | {'name': 'a', 'power': '300 W'} | 'circuit-current': '25 A' | 25 A comes out when the watts are divided by 12 V; here it is 48 V.",
                "12 V | {'name': 'a', 'power': '300 W'} | 'circuit-current': '12.5 A' | 12.5 A comes out when the watts are divided by 24 V; here it is 12 V.",
                "24 V | {'name': 'a', 'power': '300 W'}, {'name': 'b', 'power': '60 W'} | 'circuit-current': '30 A' | 30 A comes out when the watts are divided by 12 V; here it is 24 V.",
                "24 V | {'name': 'a', 'power': '300 W'} | 'drop': '0.717 V' | divided by 12 V; here it is 24 V.",
                "12 V | {'name': 'a', 'power': '24 W'} | 'circuit-current': '1 A' | 1 A comes out when the watts are divided by 24 V; here it is 12 V.",
                "24 V | {'name': 'a', 'power': '300 W'} | 'drop': '0.358 V', 'drop-percent': '2.99 %' | 2.99 % comes out with 12 V as the supply voltage; here it is 24 V.",
                "24 V | {'name': 'a', 'power': '300 W'} | 'drop': '0.358 V', 'voltage-at-load': '11.64 V' | 11.64 V comes out with 12 V as the supply voltage; here it is 24 V.",
                "24 V | {'name': 'a', 'power': '300 W'} | 'circuit-current': '25 A', 'drop': '0.717 V', 'drop-percent': '5.97 %' | 5.97 % comes out with 12 V as the supply voltage; here it is 24 V.",
            })
    void theVoltageThatWasUsedIsNamed(
            final String volts, final String loads, final String own, final String said) {
        final String cable = "'one-way-length': '5 m', 'section': '6 mm2'";
        assertThat(last(volts, loads, cable, own).explanation()).contains(said);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'section': '10 mm2' | 'circuit-current': '1.1 A'",
                "'section': '1.5 mm2' | 'circuit-current': '1.1 A'",
                "'section': '1.5 mm2', 'fuse': '5 A' | 'circuit-current': '1.1 A'",
                "'section': '2.5 mm2' | 'section-for-drop': '0.5 mm2'",
                "'section': '1.5 mm2' | 'fuse-floor': '5.1 A'",
            })
    void aCableThatIsThickEnoughIsNotSaidToOverheat(final String cable, final String own) {
        final String run = "'one-way-length': '5 m', " + cable;
        final Mark mark = last("12 V", load("'power': '24 W'"), run, own);
        assertThat(mark.isSound()).isFalse();
        assertThat(mark.explanation()).doesNotContain("overheat").doesNotContain("fire");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'power': '24 W' | 'fuse-series': 'blade' | 'circuit-current': '1.1 A'",
                "'power': '480 W' | 'section': '1.5 mm2' | 'circuit-current': '31 A'",
                "'power': '24 W' | 'section': '1.5 mm2' | 'fuse-floor': '51 A'",
            })
    void oneThatIsTooThinOrNotChosenYetIs(final String load, final String cable, final String own) {
        final String run = "'one-way-length': '5 m', " + cable;
        assertThat(last("12 V", load(load), run, own).explanation()).contains("overheat");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'circuit-current': '2 A', 'loop-resistance': '0.115 ohm', 'drop': '0.31 V' | drop",
                "'circuit-current': '2 A', 'drop': '0.23 V', 'drop-percent': '2.7 %' | drop percent",
                "'drop': '0.23 V', 'drop-percent': '2.7 %' | drop percent",
                "'drop': '0.238 V', 'drop-percent': '2.7 %' | drop percent",
                "'circuit-current': '2 A', 'drop': '0.31 V' | loop length",
                "'fuse-ceiling': '26 A' | table ampacity: looked up in the table by 1.5 mm²",
            })
    void theWorkingIsOpenedAtTheFirstLineThatIsNotSound(final String own, final String line) {
        assertThat(last("12 V", load("'power': '24 W'"), RUN, own).explanation())
                .contains("Look in the whole working at the " + line);
    }

    /** 141 W: 11.75 A and 0.202 V; 8.5 A lose 0.146 V, or 0.149 V by another figure for copper. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "141 W | 'one-way-length': '3 m', 'section': '6 mm2' | 'circuit-current': '8.5 A', 'drop': '0.149 V' | 0.149 V follows from your 8.5 A above; with that (and 0.0175 Ω·mm²/m for copper) it is right. Worked through, it is 0.2021 V.",
                "24 W | 'one-way-length': '3 m', 'section': '1.5 mm2' | 'circuit-current': '1 A', 'drop': '0.07 V' | 0.07 V follows from your 1 A above; with that, it is right. Worked through, it is 0.1376 V.",
            })
    void whatFollowsSaysFromWhichFigureAndWhatItComesTo(
            final String watts, final String cable, final String own, final String said) {
        assertThat(last("12 V", load("'power': '" + watts + "'"), cable, own).explanation())
                .isEqualTo(said);
    }

    private static final String FRIDGE = "'power': '45 W', 'share-of-time': '40 %'";

    /** What people get wrong on a page of five circuits, each in the words of what they did. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'circuit-current': '3.75 A', 'fuse-floor': '1.88 A' | 1.88 A comes out when the current is scaled by the share of time",
                "'circuit-current': '3.75 A', 'drop': '0.103 V' | the cable is counted one way",
                "'drop': '0.103 V' | 24 V in place of 12 V or the cable counted one way. Put in your own circuit current as well: it shows which.",
                "'daily-energy': '1080 Wh' | 1080 Wh is what it takes with everything on for all 24 hours.",
                "'daily-energy': '45 Wh' | 45 Wh has the number of the watts",
                "'fuse': '3 A' | 3 A is below the current that flows in use, 3.75 A.",
            })
    void whatGoesWrongOnAPageIsSaidInItsOwnWords(final String own, final String said) {
        final String cable = "'one-way-length': '4 m', 'section': '2.5 mm2'";
        assertThat(last("12 V", load(FRIDGE), cable, own).explanation()).contains(said);
    }

    /** Beside it in a list, and on paper, nothing else says what comes out. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'power': '300 W', 'efficiency': '90 %' | 'circuit-current': '25 A' | 27.7?8 A",
                "'power': '300 W', 'efficiency': '90 %' | 'circuit-current': '22.5 A' | 27.7?8 A",
                "'power': '45 W', 'share-of-time': '40 %' | 'daily-energy': '1080 Wh' | 432 Wh",
                "'power': '45 W' | 'circuit-current': '1.88 A' | 3.75 A",
                "'power': '350 W' | 'circuit-current': '3 A' | 29.[12]7? A",
                "'current': '450 mA' | 'circuit-current': '450 A' | 0.45 A",
                "'power': '24 W' | 'drop': '0.46 V' | 0.2293? V",
                "'power': '24 W' | 'drop': '0.31 V' | 0.2293? V",
                "'power': '24 W' | 'drop': '0.05 V', 'drop-percent': '0.42 %' | 1.911? %",
            })
    void whatComesOutIsNamedOnce(final String load, final String own, final String right) {
        final String words = last("12 V", load(load), RUN, own).explanation();
        assertThat(words.split("(?<![0-9.])(" + right + ")", -1)).as(words).hasSize(2);
    }

    /** 350 W over 3 m of 1.5 mm2: no fuse fits; 99 m goes by 0.0175, and 5.23 m by 0.0172. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "350 W | 'circuit-current': '2.9 A', 'fuse-floor': '3.6 A', 'fuse': '5 A' | Worked through, nothing fits. | nothing fits",
                "36 W | 'longest-run': '99 m' | the sum gives 5.232 m. | 5.[0-9]+ m",
            })
    void whatComesOutIsNeverNamedInTwoWays(
            final String watts, final String own, final String said, final String figure) {
        final String cable = "'one-way-length': '3 m', 'section': '1.5 mm2'";
        final String words =
                last("12 V", load("'power': '" + watts + "'"), cable, own).explanation();
        assertThat(words).contains(said);
        assertThat(words.split(figure, -1)).hasSize(2);
    }

    private static final String TWO =
            "{'name': 'lamp', 'power': '30 W', 'hours-a-day': '4 h'},"
                    + " {'name': 'radio', 'power': '20 W', 'hours-a-day': '2 h'}";

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'circuit-current': '50 A' | 50 A comes out when the watts are taken as amps.",
                "'circuit-current': '600 A' | 600 A comes out when the watts are multiplied by the volts.",
                "'daily-energy': '300 Wh' | all the watts are multiplied by all the hours together",
            })
    void oneSlipMadeAtEveryLoadAlikeIsOneSlip(final String own, final String said) {
        assertThat(last("12 V", TWO, RUN, own).explanation()).contains(said);
    }

    @ParameterizedTest
    @CsvSource({"22.5 A, multiplied by the efficiency", "1.45 A, divided by 230 V"})
    void aSingleLoadBehindAnInverterIsNotComparedWithItself(final String own, final String said) {
        final String load = load("'power': '300 W', 'efficiency': '90 %'");
        assertThat(last("12 V", load, RUN, "'circuit-current': '" + own + "'").explanation())
                .contains(said);
    }

    /** A spreadsheet's error stands where the drop should. */
    @ParameterizedTest
    @ValueSource(strings = {"#REF!", "about a third"})
    void nothingFollowsFromAFigureThatCannotBeRead(final String drop) {
        final String own = "'drop': '" + drop + "', 'drop-percent': '%s'";
        final String load = load("'power': '24 W'");
        final Mark right = last("12 V", load, SHORT, own.formatted("0.76 %"));
        assertThat(right.isSound()).isTrue();
        assertThat(right.explanation()).doesNotContain("above");
        final Mark wrong = last("12 V", load, SHORT, own.formatted("5.3 %"));
        assertThat(wrong.follows()).isFalse();
        assertThat(wrong.explanation()).doesNotContain("above");
    }
}
