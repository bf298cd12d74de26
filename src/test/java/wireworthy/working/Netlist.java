package wireworthy.working;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Networks of cables as a circuit for ngspice, side by side on one ground, and what it says. */
final class Netlist {
    private static final Pattern VOLTS = Pattern.compile("v\\((s\\d+_[a-z0-9]+)\\) = ([-+.0-9e]+)");

    private Netlist() {}

    /** Whether ngspice is there. */
    static boolean installed() {
        try {
            return new ProcessBuilder("ngspice", "--version").start().waitFor() == 0;
        } catch (final IOException e) {
            return false;
        } catch (final InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** The name of a place in the circuit. */
    static String place(final int network, final String name) {
        return "s" + network + "_" + name;
    }

    /** Writes a circuit of these networks. */
    static void write(final Path circuit, final List<CableNetwork> networks) throws IOException {
        final StringBuilder file = new StringBuilder("networks of cables\n");
        final StringBuilder prints = new StringBuilder();
        for (int i = 0; i < networks.size(); i++) {
            circuit(i, networks.get(i), file, prints);
        }
        file.append(".options reltol=1e-10 abstol=1e-13 vntol=1e-12 gmin=1e-15 itl1=1000\n")
                .append(".control\nop\nset numdgt=15\n")
                .append(prints)
                .append(".endc\n.end\n");
        Files.writeString(circuit, file);
    }

    /** What one process of ngspice says of a circuit. */
    static String simulated(final Path circuit) throws IOException, InterruptedException {
        final Process process =
                new ProcessBuilder("ngspice", "-b", circuit.toString())
                        .redirectError(ProcessBuilder.Redirect.DISCARD)
                        .start();
        final String said =
                new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return said;
    }

    /** The voltages in what it said, V by {@link #place}. */
    static Map<String, Double> voltages(final String said) {
        final Map<String, Double> volts = new HashMap<>();
        final Matcher line = VOLTS.matcher(said);
        while (line.find()) {
            volts.put(line.group(1), Double.parseDouble(line.group(2)));
        }
        return volts;
    }

    private static void circuit(
            final int seed,
            final CableNetwork network,
            final StringBuilder file,
            final StringBuilder prints) {
        final String own = place(seed, "");
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
