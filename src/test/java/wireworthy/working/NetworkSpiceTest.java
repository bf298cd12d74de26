package wireworthy.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Networks of cables against ngspice, a circuit simulator. Never skipped where CI is set. */
class NetworkSpiceTest {
    private static final int NETWORKS = 200;
    private static final Pattern VOLTS = Pattern.compile("v\\((s\\d+_[a-z0-9]+)\\) = ([-+.0-9e]+)");

    @TempDir Path folder;

    private static boolean installed() {
        try {
            return new ProcessBuilder("ngspice", "--version").start().waitFor() == 0;
        } catch (final IOException e) {
            return false;
        } catch (final InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    @Test
    void voltagesAgreeWithTheSimulator() throws IOException, InterruptedException {
        final boolean there = installed();
        if (System.getenv("CI") != null) {
            assertThat(there).as("ngspice is installed").isTrue();
        }
        assumeThat(there).as("ngspice is installed").isTrue();
        final Map<String, Double> simulated = simulated();
        for (int seed = 0; seed < NETWORKS; seed++) {
            final NetworkSolution solution = NetworkSolver.solve(RandomNetwork.of(seed));
            for (final Map.Entry<String, Double> at : solution.voltages().entrySet()) {
                final String node = "s" + seed + "_" + at.getKey();
                assertThat(at.getValue())
                        .as(node)
                        .isCloseTo(
                                simulated.getOrDefault(node, Double.NaN),
                                within(1e-6 * at.getValue()));
            }
        }
    }

    /** All networks in one file, side by side on one ground. */
    private Map<String, Double> simulated() throws IOException, InterruptedException {
        final StringBuilder file = new StringBuilder("networks of cables\n");
        final StringBuilder prints = new StringBuilder();
        for (int seed = 0; seed < NETWORKS; seed++) {
            circuit(seed, RandomNetwork.of(seed), file, prints);
        }
        file.append(".options reltol=1e-10 abstol=1e-14 vntol=1e-12 itl1=1000\n.control\nop\n")
                .append("set numdgt=12\n")
                .append(prints)
                .append(".endc\n.end\n");
        final Path circuit = folder.resolve("networks.cir");
        Files.writeString(circuit, file);
        final Process process =
                new ProcessBuilder("ngspice", "-b", circuit.toString())
                        .redirectError(ProcessBuilder.Redirect.DISCARD)
                        .start();
        final String said =
                new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        final Map<String, Double> volts = new HashMap<>();
        final Matcher line = VOLTS.matcher(said);
        while (line.find()) {
            volts.put(line.group(1), Double.parseDouble(line.group(2)));
        }
        assertThat(volts).as(said.substring(0, Math.min(2000, said.length()))).isNotEmpty();
        return volts;
    }

    private static void circuit(
            final int seed,
            final CableNetwork network,
            final StringBuilder file,
            final StringBuilder prints) {
        final String own = "s" + seed + "_";
        int number = 0;
        file.append(line("V%semf %semf 0 %.17g", own, own, network.supply()));
        final double internal = Math.max(network.internalResistance(), 1e-12);
        file.append(line("R%sri %semf %ssource %.17g", own, own, own, internal));
        for (final CableNetwork.Stretch stretch : network.stretches()) {
            number++;
            file.append(
                    line(
                            "R%s%d %s%s %s%s %.17g",
                            own,
                            number,
                            own,
                            stretch.from(),
                            own,
                            stretch.to(),
                            stretch.resistance()));
        }
        for (final NetworkLoad load : network.loads()) {
            number++;
            file.append(load(own, number, load));
        }
        for (final String node : NetworkSolver.solve(network).voltages().keySet()) {
            file.append(line(".nodeset v(%s%s)=%.17g", own, node, network.supply()));
            prints.append("print v(").append(own).append(node).append(")\n");
        }
    }

    private static String load(final String own, final int number, final NetworkLoad load) {
        final String at = own + load.at();
        if (load instanceof NetworkLoad.Ohms ohms) {
            return line("R%s%d %s 0 %.17g", own, number, at, ohms.ohms());
        }
        if (load instanceof NetworkLoad.Amps amps) {
            return line("I%s%d %s 0 %.17g", own, number, at, amps.amps());
        }
        final double watts = ((NetworkLoad.Watts) load).watts();
        return line("B%s%d %s 0 I=%.17g/v(%s)", own, number, at, watts, at);
    }

    private static String line(final String text, final Object... parts) {
        return String.format(Locale.ROOT, text, parts) + "\n";
    }
}
