package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.AVAILABLE_SECTIONS;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Vehicle;
import wireworthy.working.Solver;

/**
 * Checks vehicles. The sums of a circuit are kept until something they depend on changes, so that a
 * changed figure costs one circuit's sums. Safe from several threads.
 */
public final class VehicleChecker {
    private final Solver solver = new Solver();
    private final LastParts last = new LastParts();
    private Map<CircuitInput, CircuitSums> kept = Map.of();

    /** Works all that can be worked of a vehicle. Never throws for what was typed. */
    public synchronized CheckedVehicle check(final Vehicle vehicle) {
        last.earlier().circuits(vehicle.circuits().stream().map(Circuit::name).toList());
        final FeedTree tree = new FeedTree(vehicle);
        final Source source =
                last.source()
                        .of(
                                List.of(vehicle.supply(), vehicle.main()),
                                () -> Source.of(vehicle, solver));
        final FedSums fed = new FedSums(tree, sums(vehicle, tree, source));
        final CircuitCheck check = new CircuitCheck(fed);
        final List<CheckedCircuit> circuits =
                IntStream.range(0, vehicle.circuits().size()).mapToObj(check::of).toList();
        return new WholeCheck(vehicle, fed, source, solver, last).of(circuits);
    }

    /** Forgets what own figures were sound for: another vehicle comes next. */
    public synchronized void forget() {
        last.earlier().forget();
    }

    /** The voltage a vehicle is fed at, typed or that of its bank, as text; empty if not known. */
    public static String volts(final Vehicle vehicle) {
        return Source.volts(vehicle.supply().given(), new Solver());
    }

    private List<CircuitSums> sums(
            final Vehicle vehicle, final FeedTree tree, final Source source) {
        final Map<CircuitInput, CircuitSums> now = new HashMap<>();
        final CircuitSums[] sums = new CircuitSums[vehicle.circuits().size()];
        for (final int index : tree.tapsFirst()) {
            final List<Tap> taps = tree.taps(index).stream().map(tap -> sums[tap].asTap()).toList();
            final CircuitInput input =
                    new CircuitInput(
                            stocked(vehicle, index), source.volts(), taps, source.atBoard());
            sums[index] = now.computeIfAbsent(input, this::kept);
        }
        kept = now;
        return Stream.of(sums).map(last.earlier()::told).toList();
    }

    /** What can be bought is said once for the vehicle, unless a circuit has its own list. */
    private static Circuit stocked(final Vehicle vehicle, final int index) {
        final Circuit circuit = vehicle.circuits().get(index);
        final String stock = vehicle.main().given().text(AVAILABLE_SECTIONS);
        return stock.isEmpty() || circuit.part().given().has(AVAILABLE_SECTIONS)
                ? circuit
                : circuit.withGiven(AVAILABLE_SECTIONS, stock);
    }

    private CircuitSums kept(final CircuitInput input) {
        final CircuitSums known = kept.get(input);
        return known == null ? CircuitSums.of(input, solver) : known;
    }
}
