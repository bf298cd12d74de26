package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.*;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wireworthy.vehicle.Vehicle;
import wireworthy.working.Solver;

/** What all circuits of a vehicle come to together. */
final class WholeCheck {
    private final Vehicle vehicle;
    private final FedSums fed;
    private final Source source;
    private final Solver solver;
    private final LastParts last;

    WholeCheck(
            final Vehicle vehicle,
            final FedSums fed,
            final Source source,
            final Solver solver,
            final LastParts last) {
        this.last = last;
        this.vehicle = vehicle;
        this.fed = fed;
        this.source = source;
        this.solver = solver;
    }

    CheckedVehicle of(final List<CheckedCircuit> circuits) {
        final OptionalDouble together = together();
        final MainCheck main =
                last.main()
                        .of(
                                List.of(vehicle.main(), source, together),
                                () -> new MainCheck(vehicle.main(), source, together, solver));
        final CheckedPart supply =
                new SupplyCheck(fed, circuits.size(), last).of(vehicle.supply(), solver);
        final CheckedPart mainPart = main.part(last.earlier());
        return new CheckedVehicle(
                vehicle,
                circuits,
                supply,
                mainPart,
                main.window(),
                main.volts(),
                known(atBoard().mapToDouble(this::current).sum()),
                together,
                faults(main),
                placed(circuits, mainPart, supply));
    }

    private Stream<Integer> atBoard() {
        return all().filter(i -> fed.tree().feeder(i).isEmpty());
    }

    private Stream<Integer> all() {
        return IntStream.range(0, vehicle.circuits().size()).boxed();
    }

    private double current(final int index) {
        return fed.own(index).sums().value(CIRCUIT_CURRENT).orElse(Double.NaN);
    }

    /** Of circuits that never run at the same time only the largest counts. */
    private OptionalDouble together() {
        final Map<String, Double> largest = new HashMap<>();
        atBoard().forEach(index -> largest.merge(group(index), current(index), Math::max));
        return known(largest.values().stream().mapToDouble(amps -> amps).sum());
    }

    private String group(final int index) {
        final String never = fed.circuit(index).neverWith().strip();
        return never.isEmpty() ? "alone " + index : "never " + never;
    }

    private static OptionalDouble known(final double amps) {
        return amps > 0 ? OptionalDouble.of(amps) : OptionalDouble.empty();
    }

    private List<FuseFault> faults(final MainCheck main) {
        return Stream.concat(
                        Stream.of(main.fault()), all().map(fed::fault).flatMap(Optional::stream))
                .toList();
    }

    private static List<CheckedVehicle.Placed> placed(
            final List<CheckedCircuit> circuits, final CheckedPart main, final CheckedPart supply) {
        final List<CheckedVehicle.Placed> all = new ArrayList<>();
        Stream.concat(main.cautions().stream(), supply.cautions().stream())
                .map(each -> new CheckedVehicle.Placed(CheckedVehicle.WHOLE, "", each))
                .forEach(all::add);
        for (int i = 0; i < circuits.size(); i++) {
            final int index = i;
            final String name = circuits.get(i).circuit().name();
            circuits.get(i).cautions().stream()
                    .map(each -> new CheckedVehicle.Placed(index, name, each))
                    .forEach(all::add);
        }
        all.sort(Comparator.comparing(each -> each.caution().danger()));
        return List.copyOf(all);
    }
}
