package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.*;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import wireworthy.facts.FuseSeries;
import wireworthy.facts.FuseSeriesTable;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.vehicle.Vehicle;
import wireworthy.vehicle.Vocabulary;
import wireworthy.working.Solver;

/** What all circuits of a vehicle come to together. */
final class WholeCheck {
    private static final List<Quantity> MAIN_FIND =
            List.of(
                    FUSE_FLOOR,
                    MAIN_FUSE,
                    TABLE_AMPACITY,
                    AMPACITY,
                    FUSE_CEILING,
                    FUSE,
                    LOOP_RESISTANCE,
                    DROP,
                    DROP_PERCENT,
                    POWER_LOST,
                    SECTION_FOR_AMPACITY,
                    STANDARD_SECTION);
    private static final List<Quantity> SUPPLY_FIND =
            List.of(
                    BANK_VOLTAGE,
                    BANK_CAPACITY,
                    BANK_ENERGY,
                    USABLE_ENERGY,
                    DAILY_ENERGY,
                    RUNTIME,
                    CAPACITY_NEEDED,
                    CHARGE_TIME,
                    ARRAY_POWER);
    private static final double DAY = 24 * 3600.0;

    private final Vehicle vehicle;
    private final FeedTree tree;
    private final Source source;
    private final Solver solver;

    WholeCheck(
            final Vehicle vehicle, final FeedTree tree, final Source source, final Solver solver) {
        this.vehicle = vehicle;
        this.tree = tree;
        this.source = source;
        this.solver = solver;
    }

    CheckedVehicle of(final List<CheckedCircuit> circuits, final List<CircuitSums> sums) {
        final OptionalDouble total = total(circuits);
        final OptionalDouble together = together(circuits);
        final Sums main = main(together);
        final CheckedPart supply = supply(circuits, sums).part();
        return new CheckedVehicle(
                vehicle,
                circuits,
                supply,
                main.part(),
                window(main),
                total,
                together,
                List.of(),
                placed(circuits, main.part(), supply));
    }

    private List<CheckedCircuit> atBoard(final List<CheckedCircuit> circuits) {
        return Stream.iterate(0, i -> i < circuits.size(), i -> i + 1)
                .filter(i -> tree.feeder(i).isEmpty())
                .map(circuits::get)
                .toList();
    }

    private OptionalDouble total(final List<CheckedCircuit> circuits) {
        double amps = 0;
        for (final CheckedCircuit each : atBoard(circuits)) {
            amps += each.value(CIRCUIT_CURRENT).orElse(Double.NaN);
        }
        return known(amps);
    }

    /** Of circuits that never run at the same time only the largest counts. */
    private OptionalDouble together(final List<CheckedCircuit> circuits) {
        final Map<String, Double> largest = new HashMap<>();
        double amps = 0;
        for (final CheckedCircuit each : atBoard(circuits)) {
            final double own = each.value(CIRCUIT_CURRENT).orElse(Double.NaN);
            final String group = each.circuit().neverWith().strip();
            if (group.isEmpty()) {
                amps += own;
            } else {
                largest.merge(group, own, Math::max);
            }
        }
        return known(amps + largest.values().stream().mapToDouble(a -> a).sum());
    }

    private static OptionalDouble known(final double amps) {
        return amps > 0 ? OptionalDouble.of(amps) : OptionalDouble.empty();
    }

    private Sums main(final OptionalDouble together) {
        final List<Quantity> asTyped =
                Vocabulary.MAIN.stream().filter(each -> each != MAIN_FUSE).toList();
        final Givens givens = new Givens().of(vehicle.main().given(), asTyped);
        givens.typedAs(FUSE, MAIN_FUSE, vehicle.main().given().text(MAIN_FUSE));
        if (!source.volts().isEmpty()) {
            givens.typed(SUPPLY_VOLTAGE, source.volts());
        }
        together.ifPresent(amps -> givens.worked(CIRCUIT_CURRENT, amps));
        return Sums.of(solver, givens, MAIN_FIND, vehicle.main().answers());
    }

    private FuseWindow window(final Sums main) {
        final FuseSeries series =
                main.worked()
                        .map(worked -> worked.plan().setting().series())
                        .orElse(FuseSeriesTable.all().get(0));
        final OptionalDouble chosen =
                main.worked()
                        .flatMap(worked -> worked.typed(Ref.circuit(FUSE)))
                        .map(read -> OptionalDouble.of(read.value()))
                        .orElseGet(OptionalDouble::empty);
        return FuseWindow.of(
                main.value(FUSE_FLOOR),
                main.value(FUSE_CEILING),
                series,
                vehicle.main().given().has(FUSE_SERIES),
                chosen);
    }

    private Sums supply(final List<CheckedCircuit> circuits, final List<CircuitSums> sums) {
        final Givens givens = new Givens().all(vehicle.supply().given());
        double joules = 0;
        for (int i = 0; i < circuits.size(); i++) {
            if (tree.feeder(i).isEmpty()) {
                joules += daily(circuits.get(i), sums.get(i));
            }
        }
        if (joules > 0) {
            givens.worked(DAILY_ENERGY, joules);
            givens.worked(LOAD_POWER, joules / DAY);
        }
        return Sums.of(solver, givens, SUPPLY_FIND, vehicle.supply().answers());
    }

    private static double daily(final CheckedCircuit circuit, final CircuitSums sums) {
        return sums.network()
                .map(solution -> NetworkSums.dailyEnergy(circuit.circuit(), solution))
                .orElseGet(() -> circuit.value(DAILY_ENERGY).orElse(Double.NaN));
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
