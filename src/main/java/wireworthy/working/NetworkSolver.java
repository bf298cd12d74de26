package wireworthy.working;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;
import wireworthy.texts.TextBundle;

/**
 * Works a network of cables by nodal analysis: at each place the currents add up to nothing
 * (Kirchhoff). Loads of constant watts make the sums curved; they are worked by Newton's way from
 * the voltage of the source down, which leads to the higher of two voltages, the one at which loads
 * run. There every small rise of voltage asks for more current, so the matrix is positive definite;
 * once it is not, the cable can't deliver the watts.
 */
public final class NetworkSolver {
    private static final TextBundle REFUSALS = new TextBundle("refusals");

    private static final int MOST_STEPS = 100;
    private static final double CLOSE = 1e-13;

    private final CableNetwork network;
    private final List<String> places;
    private final int fixed;
    private final double[] volts;

    private NetworkSolver(final CableNetwork network) {
        this.network = network;
        this.places = places(network);
        // A source without resistance of its own holds the voltage of its place.
        this.fixed = network.internalResistance() == 0 ? 1 : 0;
        this.volts = new double[places.size()];
        Arrays.fill(volts, network.supply());
    }

    /** The places, the source first. */
    private static List<String> places(final CableNetwork network) {
        final Set<String> places = new LinkedHashSet<>();
        places.add(CableNetwork.SOURCE);
        for (final CableNetwork.Stretch stretch : network.stretches()) {
            places.add(stretch.from());
            places.add(stretch.to());
        }
        return List.copyOf(places);
    }

    /**
     * The voltage at each place.
     *
     * @throws Unworkable where no voltage satisfies the loads
     */
    public static NetworkSolution solve(final CableNetwork network) {
        return new NetworkSolver(network).solution();
    }

    private NetworkSolution solution() {
        double moved = Double.POSITIVE_INFINITY;
        for (int step = 0; step < MOST_STEPS && moved > CLOSE * network.supply(); step++) {
            moved = step();
        }
        if (!(moved <= Math.sqrt(CLOSE) * network.supply())) {
            throw cannotDeliver();
        }
        final Map<String, Double> at = new LinkedHashMap<>();
        for (int i = 0; i < volts.length; i++) {
            at.put(places.get(i), volts[i]);
        }
        return new NetworkSolution(network, at, current());
    }

    /** One step; returns how far the voltage moved that moved furthest, V. */
    private double step() {
        final int size = volts.length - fixed;
        if (size == 0) {
            return 0;
        }
        final DMatrixRMaj slopes = new DMatrixRMaj(size, size);
        final DMatrixRMaj excess = new DMatrixRMaj(size, 1);
        source(slopes, excess);
        network.stretches().forEach(stretch -> stretch(stretch, slopes, excess));
        network.loads().forEach(load -> load(load, slopes, excess));
        final LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.chol(size);
        if (!solver.setA(slopes)) {
            throw cannotDeliver();
        }
        final DMatrixRMaj change = new DMatrixRMaj(size, 1);
        solver.solve(excess, change);
        return move(change);
    }

    private double move(final DMatrixRMaj change) {
        double furthest = 0;
        for (int i = fixed; i < volts.length; i++) {
            final double by = change.get(i - fixed, 0);
            volts[i] -= by;
            furthest = Math.max(furthest, Math.abs(by));
            if (!(volts[i] > 0)) {
                throw cannotDeliver();
            }
        }
        return furthest;
    }

    private void source(final DMatrixRMaj slopes, final DMatrixRMaj excess) {
        if (fixed == 0) {
            final double conductance = 1 / network.internalResistance();
            slopes.add(0, 0, conductance);
            excess.add(0, 0, conductance * (volts[0] - network.supply()));
        }
    }

    private void stretch(
            final CableNetwork.Stretch stretch,
            final DMatrixRMaj slopes,
            final DMatrixRMaj excess) {
        final int a = places.indexOf(stretch.from());
        final int b = places.indexOf(stretch.to());
        final double conductance = 1 / stretch.resistance();
        final double current = conductance * (volts[a] - volts[b]);
        leaving(a, b, conductance, current, slopes, excess);
        leaving(b, a, conductance, -current, slopes, excess);
    }

    private void leaving(
            final int from,
            final int to,
            final double conductance,
            final double current,
            final DMatrixRMaj slopes,
            final DMatrixRMaj excess) {
        if (from < fixed) {
            return;
        }
        slopes.add(from - fixed, from - fixed, conductance);
        excess.add(from - fixed, 0, current);
        if (to >= fixed) {
            slopes.add(from - fixed, to - fixed, -conductance);
        }
    }

    private void load(final NetworkLoad load, final DMatrixRMaj slopes, final DMatrixRMaj excess) {
        final int at = places.indexOf(load.at());
        if (at >= fixed) {
            slopes.add(at - fixed, at - fixed, load.slope(volts[at]));
            excess.add(at - fixed, 0, load.current(volts[at]));
        }
    }

    /** All that the loads take flows through the source. */
    private double current() {
        return network.loads().stream()
                .mapToDouble(load -> load.current(volts[places.indexOf(load.at())]))
                .sum();
    }

    private static Unworkable cannotDeliver() {
        return new Unworkable("given.network", REFUSALS.of("cannot-deliver"));
    }
}
