package wireworthy.vehicle.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wireworthy.rules.Quantity.*;

import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Cables tapped off other cables. */
class TapTest {
    private static final Offset<Double> CLOSE = within(1e-9);
    private static final String DESK =
            """
            {"name": "Desk", "given": {"loads": [{"name": "till", "current": "4 A"}],
               "one-way-length": "3 m", "section": "4 mm2", "fuse": "20 A"}}
            """;

    private static String fan(final String from, final boolean ownFuse) {
        return """
               {"name": "Fan", "fed-from": "%s", "own-fuse": %s, "given": {
                  "loads": [{"name": "fan", "current": "2 A", "start-multiple": "3"}],
                  "one-way-length": "2 m", "section": "0.5 mm2"}}
               """
                .formatted(from, ownFuse);
    }

    private static List<CheckedCircuit> circuits(final String... circuits) {
        return Checked.check(Checked.vehicle(circuits)).circuits();
    }

    @Test
    void aThinnerCableWithoutAFuseOfItsOwnIsFound() {
        final List<CheckedCircuit> both = circuits(DESK, fan("Desk", false));
        assertThat(Checked.ids(both.get(1).cautions())).startsWith("thinner-cable-behind");
        assertThat(both.get(1).cautions().get(0).text()).contains("\"Desk\"", "20 A", "11 A");
    }

    @Test
    void itIsFoundBeforeTheFuseIsChosenToo() {
        final String open = DESK.replace(", \"fuse\": \"20 A\"", "");
        final List<CheckedCircuit> both = circuits(open, fan("Desk", false));
        assertThat(both.get(0).fuse().between()).containsExactly(7.5, 10.0);
        assertThat(Checked.ids(both.get(1).cautions())).doesNotContain("thinner-cable-behind");
    }

    @Test
    void withAFuseOfItsOwnItIsSafe() {
        final List<CheckedCircuit> both = circuits(DESK, fan("Desk", true));
        assertThat(Checked.ids(both.get(1).cautions())).doesNotContain("thinner-cable-behind");
        assertThat(both.get(0).fuse().ceiling()).hasValue(39);
    }

    @Test
    void withoutOneTheFuseBeforeMustNotBeAboveTheThinCable() {
        assertThat(circuits(DESK, fan("Desk", false)).get(0).fuse().ceiling()).hasValue(11);
    }

    @Test
    void theCableBeforeCarriesBothAndLosesForBoth() {
        final List<CheckedCircuit> both = circuits(DESK, fan("Desk", true));
        final double before = 6 * 0.0172 * 6 / 4;
        final double own = 2 * 0.0172 * 4 / 0.5;
        assertThat(both.get(0).value(CIRCUIT_CURRENT)).hasValueCloseTo(6.0, CLOSE);
        assertThat(both.get(0).value(START_CURRENT)).hasValueCloseTo(6 + 2 * 2.0, CLOSE);
        assertThat(both.get(1).dropFromBoard()).hasValueCloseTo(before + own, CLOSE);
        assertThat(both.get(1).loads().get(0).predicted())
                .hasValueCloseTo(12 - before - own, CLOSE);
        assertThat(Checked.ids(both.get(1).cautions())).contains("drop-over-limit");
    }

    @Test
    void theBoardSeesItsCurrentOnce() {
        final CheckedVehicle van = Checked.check(Checked.vehicle(DESK, fan("Desk", true)));
        assertThat(van.totalCurrent()).hasValueCloseTo(6.0, CLOSE);
    }

    @Test
    void aCircuitThatIsNotThereIsSaid() {
        final CheckedCircuit fan = circuits(DESK, fan("Counter", false)).get(1);
        assertThat(fan.notesAt("fed-from"))
                .extracting(FieldNote::text)
                .containsExactly("No circuit is called \"Counter\".");
    }

    @Test
    void cablesThatWouldFeedEachOtherAreSaid() {
        final String desk = DESK.replace("\"given\"", "\"fed-from\": \"Fan\", \"given\"");
        assertThat(circuits(desk, fan("Desk", false)))
                .allSatisfy(each -> assertThat(each.notesAt("fed-from")).hasSize(1));
    }

    @Test
    void anUnknownTapLeavesTheCurrentBeforeItOpen() {
        final String unknown = fan("Desk", true).replace("2 A", "some");
        final CheckedCircuit desk = circuits(DESK, unknown).get(0);
        assertThat(desk.value(CIRCUIT_CURRENT)).isEmpty();
        assertThat(desk.notesAt("given.loads").get(0).text()).contains("\"Fan\"");
        assertThat(Optional.of(desk).map(CheckedCircuit::fuse).orElseThrow().known()).isFalse();
    }
}
