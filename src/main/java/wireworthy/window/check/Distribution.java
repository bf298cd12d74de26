package wireworthy.window.check;

import static wireworthy.rules.Quantity.*;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Part;
import wireworthy.vehicle.Understood;
import wireworthy.vehicle.Vehicle;
import wireworthy.vehicle.check.CheckedCircuit;
import wireworthy.vehicle.check.CheckedVehicle;
import wireworthy.window.parts.DistributionDrawing;
import wireworthy.window.parts.DistributionDrawing.Branch;

/**
 * How the circuits of a vehicle branch off.
 *
 * @param supply its voltage
 * @param main fuse and cable
 */
record Distribution(String supply, String main, List<Branch> branches) {
    static Distribution of(final CheckedVehicle checked) {
        final Vehicle vehicle = checked.vehicle();
        return new Distribution(
                text(vehicle.supply(), SUPPLY_VOLTAGE),
                joined(fuse(checked.mainFuse().inUse()), cable(vehicle.main())),
                branches(checked, "", 0));
    }

    DistributionDrawing drawing() {
        return new DistributionDrawing(supply, main, branches);
    }

    /** The circuits fed from one, each followed by its taps. */
    private static List<Branch> branches(
            final CheckedVehicle checked, final String feeder, final int depth) {
        final List<Branch> branches = new ArrayList<>();
        for (final CheckedCircuit each : checked.circuits()) {
            final Circuit circuit = each.circuit();
            // Circuits that feed each other in a circle hang on nothing.
            if (depth <= checked.circuits().size() && circuit.feed().circuit().equals(feeder)) {
                branches.add(branch(each, depth));
                branches.addAll(
                        circuit.name().isBlank()
                                ? List.of()
                                : branches(checked, circuit.name(), depth + 1));
            }
        }
        return branches;
    }

    private static Branch branch(final CheckedCircuit checked, final int depth) {
        final Circuit circuit = checked.circuit();
        final boolean fused = circuit.feed().ownFuse();
        return new Branch(
                depth,
                fused,
                checked.fuseMissing(),
                circuit.name(),
                fused ? fuse(checked.fuse().inUse()) : "",
                circuit.isNetwork()
                        ? CheckTexts.counted("several.short", circuit.stretches().size())
                        : cable(circuit.part()));
    }

    private static String fuse(final OptionalDouble amps) {
        return amps.isEmpty() ? "?" : FigureText.of(amps.getAsDouble(), Dimension.CURRENT);
    }

    private static String cable(final Part part) {
        return joined(text(part, SECTION), text(part, ONE_WAY_LENGTH));
    }

    private static String joined(final String... texts) {
        return Stream.of(texts).filter(it -> !it.isEmpty()).collect(Collectors.joining(", "));
    }

    private static String text(final Part part, final Quantity quantity) {
        final Understood understood = Understood.of(quantity, part.given().text(quantity));
        return understood instanceof Understood.Trouble ? "?" : understood.text();
    }
}
