package wireworthy.vehicle.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wireworthy.rules.Quantity.*;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import wireworthy.working.Danger;

/** A circuit whose cable feeds several places in turn. */
class NetworkCircuitTest {
    private static final Offset<Double> CLOSE = within(1e-9);
    private static final String LINE =
            """
            {"name": "Aisle", "given": {"fuse": "10 A", "drop-limit": "2 %", "network": {
               "stretches": [
                  {"from": "source", "to": "A", "one-way-length": "4 m", "section": "2.5 mm2"},
                  {"from": "A", "to": "B", "one-way-length": "3 m", "section": "1 mm2"}],
               "loads": [
                  {"name": "lamps", "at": "A", "current": "1 A", "count": "2", "hours-a-day": "6 h"},
                  {"name": "fan", "at": "B", "current": "1.5 A", "measured": "11 V"}]}}}
            """;
    private static final double FIRST = 3.5 * 2 * 0.0172 * 4 / 2.5;
    private static final double SECOND = 1.5 * 2 * 0.0172 * 3 / 1;

    @Test
    void eachPlaceHasItsOwnVolts() {
        final CheckedCircuit line = Checked.circuit(LINE);
        assertThat(line.network()).isPresent();
        assertThat(line.loads().get(0).predicted()).hasValueCloseTo(12 - FIRST, CLOSE);
        assertThat(line.loads().get(1).predicted()).hasValueCloseTo(12 - FIRST - SECOND, CLOSE);
        assertThat(line.loads().get(0).current()).hasValueCloseTo(2.0, CLOSE);
        assertThat(line.dropFromBoard()).hasValueCloseTo(FIRST + SECOND, CLOSE);
    }

    @Test
    void theFuseGoesByAllLoadsAndTheThinnestStretch() {
        final CheckedCircuit line = Checked.circuit(LINE);
        assertThat(line.fuse().floor()).hasValueCloseTo(1.25 * 3.5, CLOSE);
        assertThat(line.fuse().ceiling()).hasValue(16.5);
    }

    @Test
    void cautionsOfTheNetworkStandWithTheOthersWorstFirst() {
        final String large = LINE.replace("\"fuse\": \"10 A\"", "\"fuse\": \"20 A\"");
        assertThat(Checked.ids(Checked.circuit(large).cautions()))
                .contains("thinner-cable-behind", "drop-over-limit");
        assertThat(Checked.circuit(large).cautions().get(0).danger()).isEqualTo(Danger.FIRE);
    }

    @Test
    void aThinnerStretchIsNoDangerBehindAFuseSmallEnoughForIt() {
        assertThat(Checked.ids(Checked.circuit(LINE).cautions()))
                .containsExactly("drop-over-limit", "less-arrives");
    }

    @Test
    void measuredVoltsAreComparedAtEachPlace() {
        assertThat(Checked.circuit(LINE).loads().get(1).measured().orElseThrow().text())
                .contains("joint; a longer run,")
                .startsWith("0.65 V less arrive than predicted.");
    }

    @Test
    void itsEnergyCountsInTheDay() {
        final CheckedVehicle van = Checked.check(Checked.vehicle(LINE));
        assertThat(van.totalCurrent()).hasValueCloseTo(3.5, CLOSE);
        assertThat(van.supply().value(DAILY_ENERGY).orElseThrow() / 3600)
                .isCloseTo(12 * (2 * 6 + 1.5 * 24), within(1e-6));
    }

    @Test
    void loadsTheCableCannotFeedAreSaidSo() {
        final String greedy = LINE.replace("\"current\": \"1.5 A\"", "\"power\": \"900 W\"");
        final CheckedCircuit line = Checked.circuit(greedy);
        assertThat(line.network()).isEmpty();
        assertThat(line.notesAt("given.network").get(0).text()).contains("can't deliver");
        assertThat(line.fuse().known()).isFalse();
    }

    @Test
    void aPlaceNoStretchLeadsToIsSaidAtItsLoad() {
        final CheckedCircuit line = Checked.circuit(LINE.replace("\"at\": \"B\"", "\"at\": \"C\""));
        assertThat(line.notesAt("given.network.loads[1].at")).hasSize(1);
    }
}
