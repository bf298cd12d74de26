package wireworthy.working;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Works a network of 60 places, and has one process of ngspice work the same; prints the median of
 * each in milliseconds, and how many times faster the first is. The aim is 50.
 */
public final class NetworkAgainstSpice {
    private static final int PLACES = 60;
    private static final int WARM_UP = 2000;
    private static final int TIMES = 21;
    private static final double NANOS = 1e6;

    private NetworkAgainstSpice() {}

    /** A piece of work that can fail. */
    private interface Work {
        void run() throws IOException, InterruptedException;
    }

    public static void main(final String[] arguments) throws IOException, InterruptedException {
        final CableNetwork network = RandomNetwork.of(new Random(60), PLACES);
        final Path circuit = Files.createTempFile("network", ".cir");
        try {
            Netlist.write(circuit, List.of(network));
            for (int i = 0; i < WARM_UP; i++) {
                NetworkSolver.solve(network);
            }
            final double own = median(() -> NetworkSolver.solve(network));
            final double spice = median(() -> Netlist.simulated(circuit));
            System.out.printf(
                    Locale.ROOT,
                    "%d places: %.3f ms, one process of ngspice %.1f ms, %.0f times%n",
                    PLACES,
                    own,
                    spice,
                    spice / own);
        } finally {
            Files.delete(circuit);
        }
    }

    private static double median(final Work work) throws IOException, InterruptedException {
        final double[] times = new double[TIMES];
        for (int i = 0; i < TIMES; i++) {
            final long began = System.nanoTime();
            work.run();
            times[i] = (System.nanoTime() - began) / NANOS;
        }
        Arrays.sort(times);
        return times[TIMES / 2];
    }
}
