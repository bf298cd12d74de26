package wireworthy.vehicle.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import wireworthy.vehicle.Vehicle;
import wireworthy.vehicle.VehicleRead;
import wireworthy.vehicle.VehicleReader;
import wireworthy.working.Caution;

/** Vehicles written down as files have them, checked. */
final class Checked {
    private Checked() {}

    /** A vehicle on 12 V with these circuits, each an object of the file. */
    static Vehicle vehicle(final String... circuits) {
        return read("{\"given\": {\"supply-voltage\": \"12 V\"}}", "{}", circuits);
    }

    static Vehicle read(final String supply, final String main, final String... circuits) {
        final String text =
                """
                {"wireworthy": "vehicle", "version": 1, "name": "Van",
                 "supply": %s, "main": %s, "circuits": [%s]}
                """
                        .formatted(supply, main, String.join(",\n", circuits));
        final VehicleRead read = VehicleReader.read("van.json", text);
        assertThat(read).isInstanceOf(VehicleRead.Whole.class);
        return ((VehicleRead.Whole) read).vehicle();
    }

    static CheckedVehicle check(final Vehicle vehicle) {
        return new VehicleChecker().check(vehicle);
    }

    /** The only circuit of a vehicle on 12 V. */
    static CheckedCircuit circuit(final String circuit) {
        return check(vehicle(circuit)).circuits().get(0);
    }

    static List<String> ids(final List<Caution> cautions) {
        return cautions.stream().map(Caution::id).toList();
    }
}
