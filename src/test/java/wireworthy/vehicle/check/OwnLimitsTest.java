package wireworthy.vehicle.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wireworthy.marking.Mark;
import wireworthy.working.Danger;

/** Own figures for what a cable carries, and round ones for what is only roughly known. */
class OwnLimitsTest {
    private static Mark last(final String given, final String answers) {
        final String circuit =
                """
                {"name": "C", "given": {"loads": [{"name": "lamp", "power": "55 W",
                  "hours-a-day": "3.5 h"}], "one-way-length": "2 m", %s}, "answers": {%s}}
                """
                        .formatted(given, answers)
                        .replace('\'', '"');
        final CheckedCircuit checked = Checked.circuit(circuit);
        return checked.marks().get(checked.marks().size() - 1);
    }

    /** 1 mm2 carries 16.5 A, 15.36 A at 40 degC; 19 A there would come to 17.69 A. */
    @ParameterizedTest
    @CsvSource({"17 A", "18 A", "17.7 A"})
    void whatFollowsFromAnUnsoundFigureSaysFireFirst(final String own) {
        final Mark mark =
                last(
                        "'section': '1 mm2', 'ambient-temperature': '40 degC'",
                        "'table-ampacity': '19 A', 'ampacity': '" + own + "'");
        assertThat(mark.follows()).isTrue();
        assertThat(mark.danger()).isEqualTo(Optional.of(Danger.FIRE));
        assertThat(mark.explanation())
                .startsWith("With " + own + " as the limit, the fuse could let the cable overheat")
                .contains("follows from your 19 A above");
    }

    /** The factors of an engine space belong to the tables for boats. */
    @ParameterizedTest
    @ValueSource(strings = {"25 A", "10 A"})
    void whatNothingCanBeWorkedForIsNotJudged(final String own) {
        final Mark mark =
                last(
                        "'section': '1 mm2', 'engine-space': 'yes'",
                        "'table-ampacity': '16.5 A', 'ampacity': '" + own + "'");
        assertThat(mark.sound()).isEmpty();
        assertThat(mark.explanation())
                .startsWith(own + " can't be checked: engine space factors belong to the boat");
    }

    /** 14.12 A at 50 degC. */
    @ParameterizedTest
    @ValueSource(strings = {"14 A", "14.1 A", "14.2 A"})
    void theResistivityOfCopperIsNotNamedWhereItDoesNotCount(final String own) {
        final Mark mark =
                last(
                        "'section': '1 mm2', 'ambient-temperature': '50 degC'",
                        "'table-ampacity': '19 A', 'ampacity': '" + own + "'");
        assertThat(mark.isSound()).isTrue();
        assertThat(mark.explanation()).doesNotContain("copper");
    }

    /** 192.5 Wh. */
    @ParameterizedTest
    @CsvSource({
        "200 Wh, true",
        "190 Wh, true",
        "0.19 kWh, true",
        "180 Wh, false",
        "210 Wh, false",
        "195 Wh, false",
        "200.0 Wh, false",
        "1000 Wh, false",
    })
    void aRoundNumberMayBeRoundedOffAtItsNoughts(final String own, final boolean sound) {
        final Mark mark = last("'section': '1.5 mm2'", "'daily-energy': '" + own + "'");
        assertThat(mark.isSound()).isEqualTo(sound);
    }
}
