package wireworthy.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Networks of cables against ngspice, a circuit simulator. Never skipped where CI is set. */
class NetworkSpiceTest {
    private static final int NETWORKS = 200;
    private static final double MICROVOLT = 1e-6;

    @TempDir Path folder;

    @Test
    void everyVoltageIsWithinAMicrovoltOfTheSimulator() throws IOException, InterruptedException {
        final boolean there = Netlist.installed();
        if (System.getenv("CI") != null) {
            assertThat(there).as("ngspice is installed").isTrue();
        }
        assumeThat(there).as("ngspice is installed").isTrue();
        final List<CableNetwork> networks =
                IntStream.range(0, NETWORKS).mapToObj(RandomNetwork::of).toList();
        final Path circuit = folder.resolve("networks.cir");
        Netlist.write(circuit, networks);
        final Map<String, Double> simulated = Netlist.voltages(Netlist.simulated(circuit));
        for (int i = 0; i < NETWORKS; i++) {
            final NetworkSolution solution = NetworkSolver.solve(networks.get(i));
            for (final Map.Entry<String, Double> at : solution.voltages().entrySet()) {
                final String place = Netlist.place(i, at.getKey());
                assertThat(simulated).containsKey(place);
                assertThat(at.getValue())
                        .as(place)
                        .isCloseTo(simulated.get(place), within(MICROVOLT));
            }
        }
    }
}
