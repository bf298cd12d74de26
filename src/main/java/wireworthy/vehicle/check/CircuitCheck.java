package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.*;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import wireworthy.working.Caution;
import wireworthy.working.NetworkLoad;
import wireworthy.working.NetworkSolution;
import wireworthy.working.Remedies;

/** Puts together what is said of a circuit, with what feeds it and what is tapped off it. */
final class CircuitCheck {
    private final FedSums fed;
    private final TapCautions taps;

    CircuitCheck(final FedSums fed) {
        this.fed = fed;
        this.taps = new TapCautions(fed);
    }

    CheckedCircuit of(final int index) {
        final CircuitSums own = fed.own(index);
        final Sums sums = own.sums();
        final OptionalDouble drop = fed.dropFromBoard(index);
        final OptionalDouble limit =
                sums.around().map(Remedies::limit).orElseGet(OptionalDouble::empty);
        final List<CheckedLoad> loads = loads(index);
        return new CheckedCircuit(
                own.input().circuit(),
                far(index).found(),
                fed.window(index),
                drop,
                limit,
                fed.warmFromBoard(index),
                ways(index),
                sums.marks(),
                cautions(index, limit, loads),
                notes(index),
                sums.working(),
                sums.assumed(),
                loads,
                own.network());
    }

    /** What the cables before it take is no longer there to be lost; not known, none is named. */
    private List<Way> ways(final int index) {
        final Sums sums = fed.own(index).sums();
        final double before = fed.warmBefore(index).orElse(Double.POSITIVE_INFINITY);
        return before > 0
                ? sums.around().map(around -> Way.of(around, before)).orElse(List.of())
                : sums.ways();
    }

    private FarSection far(final int index) {
        return new FarSection(
                fed.own(index).sums(), fed.warmBefore(index).orElse(Double.POSITIVE_INFINITY));
    }

    private List<FieldNote> notes(final int index) {
        return Stream.of(
                        fed.tree().note(index).stream(),
                        fed.window(index).notMade("given.fuse").stream(),
                        far(index).notes().stream())
                .flatMap(each -> each)
                .toList();
    }

    private List<Caution> cautions(
            final int index, final OptionalDouble limit, final List<CheckedLoad> loads) {
        final List<Caution> cautions = new ArrayList<>(FarDrop.cautions(fed, index, limit));
        taps.thin(index).ifPresent(cautions::add);
        fed.fault(index).flatMap(Faults::caution).ifPresent(cautions::add);
        lessArrives(loads).ifPresent(cautions::add);
        cautions.sort(Comparator.comparing(Caution::danger));
        return List.copyOf(cautions);
    }

    /** Said once, of the load at which most is missing: one joint may be behind them all. */
    private static Optional<Caution> lessArrives(final List<CheckedLoad> loads) {
        return loads.stream()
                .flatMap(load -> load.measured().stream())
                .min(Comparator.comparingDouble(CheckedLoad.Comparison::difference))
                .flatMap(CheckedLoad.Comparison::caution);
    }

    private List<CheckedLoad> loads(final int index) {
        final CircuitSums own = fed.own(index);
        final List<String> names = LoadsGiven.names(fed.circuit(index));
        final List<CheckedLoad> loads = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            final int load = i;
            final OptionalDouble current =
                    own.network()
                            .map(solution -> OptionalDouble.of(current(solution, load)))
                            .orElseGet(() -> own.loadCurrent(load));
            final OptionalDouble predicted = predicted(index, load);
            loads.add(
                    new CheckedLoad(
                            names.get(i),
                            current,
                            predicted,
                            Afterwards.of(
                                    names.get(i),
                                    fed.circuit(index).loads().get(i),
                                    own.sums(),
                                    predicted)));
        }
        return List.copyOf(loads);
    }

    private static double current(final NetworkSolution solution, final int load) {
        final NetworkLoad drawn = solution.network().loads().get(load);
        return drawn.current(solution.at(drawn.at()));
    }

    private OptionalDouble predicted(final int index, final int load) {
        final CircuitSums own = fed.own(index);
        if (own.network().isPresent()) {
            final NetworkSolution solution = own.network().get();
            final double before =
                    fed.dropFromBoard(index).orElse(Double.NaN)
                            - fed.ownDrop(index).orElse(Double.NaN);
            return known(solution.at(solution.network().loads().get(load).at()) - before);
        }
        final OptionalDouble supply = own.sums().value(SUPPLY_VOLTAGE);
        final OptionalDouble drop = fed.dropFromBoard(index);
        return supply.isEmpty() || drop.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(supply.getAsDouble() - drop.getAsDouble());
    }

    private static OptionalDouble known(final double volts) {
        return Double.isNaN(volts) ? OptionalDouble.empty() : OptionalDouble.of(volts);
    }
}
