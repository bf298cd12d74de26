package wireworthy.vehicle.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wireworthy.working.Danger;

/** Volts measured at a load that takes 4 A through 0.086 ohm on 12 V: 11.656 V are predicted. */
class AfterwardsTest {
    private static CheckedLoad measured(final String volts) {
        return Checked.circuit(
                        """
                        {"name": "Till", "given": {
                           "loads": [{"name": "till", "current": "4 A", "measured": "%s"}],
                           "one-way-length": "5 m", "section": "2 mm2"}}
                        """
                                .formatted(volts))
                .loads()
                .get(0);
    }

    private static CheckedLoad.Comparison comparison(final String volts) {
        return measured(volts).measured().orElseThrow();
    }

    private static CheckedCircuit circuit(final String first, final String second) {
        return Checked.circuit(
                """
                {"name": "Till", "given": {
                   "loads": [{"name": "till", "current": "2 A", "measured": "%s"},
                             {"name": "lamp", "current": "2 A", "measured": "%s"}],
                   "one-way-length": "5 m", "section": "2 mm2"}}
                """
                        .formatted(first, second));
    }

    @Test
    void whereFewerVoltsArriveTheCircuitSaysSoOnceOfTheLoadThatIsWorstOff() {
        final CheckedCircuit low = circuit("11.5 V", "11.2 V");
        assertThat(low.cautions())
                .filteredOn(it -> it.danger() == Danger.LESS_ARRIVES)
                .singleElement()
                .satisfies(
                        it ->
                                assertThat(it.text())
                                        .contains("\"lamp\" 11.2 V", "0.46 V less", "switch off"));
    }

    @ParameterizedTest
    @CsvSource({"11.65 V, 11.66 V", "11.9 V, 13.4 V", "low, 11.66 V"})
    void asManyOrMoreAreNoMatterForCaution(final String first, final String second) {
        assertThat(circuit(first, second).cautions())
                .noneMatch(it -> it.danger() == Danger.LESS_ARRIVES);
    }

    @Test
    void measuredStandsBesidePredicted() {
        assertThat(measured("11.4 V").predicted()).hasValueCloseTo(11.656, within(1e-9));
        assertThat(comparison("11.4 V").difference()).isCloseTo(-0.256, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(strings = {"11.65 V", "11.61 V", "11.7 V"})
    void aSmallDifferenceIsNone(final String volts) {
        assertThat(comparison(volts).text()).startsWith("As predicted");
    }

    @Test
    void fewerVoltsNameEachCauseWithTheSizeItWouldHave() {
        assertThat(comparison("11.4 V").text())
                .startsWith("0.26 V less arrive than predicted. It may be ")
                .contains(
                        "joint (one alone would have 0.064 Ω and be heated by 1 W)",
                        "a longer run (8.7 m rather than 5 m)",
                        "a thinner cable (1.1 mm² rather than 2 mm²)",
                        "loads that draw more (7 A rather than 4 A)",
                        "the battery itself stood lower",
                        "can't tell which",
                        "A joint that grows warm can start a fire");
    }

    @Test
    void moreVoltsNameTheCausesTheOtherWay() {
        assertThat(comparison("11.85 V").text())
                .startsWith("0.19 V more arrive than predicted. It may be ")
                .contains(
                        "a shorter run (2.2 m rather than 5 m)",
                        "loads that draw less (1.7 A rather than 4 A)",
                        "as while it is charged");
    }

    @Test
    void moreVoltsThanTheSupplyAreNoMatterOfTheCable() {
        assertThat(comparison("13.9 V").text())
                .contains("a load that was off", "as while it is charged")
                .doesNotContain("a shorter run");
    }

    @Test
    void whatWasMeasuredDoesNotChangeTheSums() {
        final CheckedCircuit unreadable =
                Checked.circuit(
                        """
                        {"name": "Till", "given": {
                           "loads": [{"name": "till", "current": "4 A", "measured": "low"}],
                           "one-way-length": "5 m", "section": "2 mm2"}}
                        """);
        assertThat(unreadable.loads().get(0).measured()).isEmpty();
        assertThat(unreadable.loads().get(0).predicted()).isPresent();
        assertThat(unreadable.notesAt("given.loads[0].measured")).hasSize(1);
    }
}
