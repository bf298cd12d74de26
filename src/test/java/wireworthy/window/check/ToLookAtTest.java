package wireworthy.window.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Heron;
import wireworthy.vehicle.check.CheckedCircuit;
import wireworthy.vehicle.check.VehicleChecker;

/** Figures of one's own that are named where the state of a part is. */
class ToLookAtTest {
    /** A spreadsheet's column gives its own words for a unit; the lamps take 3.594 A. */
    @ParameterizedTest
    @CsvSource({"1 amps, 1 A", "1.2, 1.2 A", "1200 mA, 1200 mA (1.2 A)"})
    void theyAreNamedAsTheyAreUnderstood(final String typed, final String named) {
        final CheckedCircuit lamps =
                new VehicleChecker()
                        .check(
                                Heron.vehicle()
                                        .withCircuit(
                                                0,
                                                Heron.vehicle()
                                                        .circuits()
                                                        .get(0)
                                                        .withAnswer(
                                                                Quantity.CIRCUIT_CURRENT, typed)))
                        .circuits()
                        .get(0);
        assertThat(ToLookAt.of(lamps.marks(), lamps.notes()).unsound())
                .contains("circuit current, " + named);
    }
}
