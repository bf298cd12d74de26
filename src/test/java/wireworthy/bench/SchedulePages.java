package wireworthy.bench;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import wireworthy.paper.Pages;
import wireworthy.paper.PaperSize;
import wireworthy.paper.schedule.Schedule;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Feed;
import wireworthy.vehicle.Heron;
import wireworthy.vehicle.Vehicle;
import wireworthy.vehicle.check.CheckedVehicle;
import wireworthy.vehicle.check.VehicleChecker;

/**
 * The circuit schedule of a vehicle of 60 circuits, from the start of the process: how long it
 * takes, and whether the same vehicle gives the same bytes. {@code SchedulePages FILE} keeps it.
 */
public final class SchedulePages {
    private static final int CIRCUITS = 60;

    private SchedulePages() {}

    public static void main(final String[] args) throws IOException {
        Pages.expect();
        final CheckedVehicle checked = new VehicleChecker().check(vehicle());
        final double ready = sinceStart();
        final byte[] first = Schedule.pdf(checked, PaperSize.A4);
        System.out.printf(
                "vehicle checked %.2f s after process start, pages %.2f s later; CPU %.2f s%n",
                ready, sinceStart() - ready, cpu());
        final long again = System.nanoTime();
        final CheckedVehicle once = new VehicleChecker().check(vehicle());
        final boolean same = Arrays.equals(first, Schedule.pdf(once, PaperSize.A4));
        System.out.printf("once more: %.2f s%n", (System.nanoTime() - again) / 1e9);
        System.out.printf("%d bytes; %s%n", first.length, same ? "the same again" : "NOT THE SAME");
        if (args.length > 0) {
            Files.write(Path.of(args[0]), first);
        }
    }

    private static double sinceStart() {
        return ManagementFactory.getRuntimeMXBean().getUptime() / 1000.0;
    }

    private static double cpu() {
        return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getProcessCpuTime()
                / 1e9;
    }

    private static Vehicle vehicle() {
        final List<Circuit> nine = Heron.vehicle().circuits();
        return Heron.vehicle()
                .withCircuits(
                        IntStream.range(0, CIRCUITS)
                                .mapToObj(i -> numbered(nine.get(i % nine.size()), i / nine.size()))
                                .toList());
    }

    /** Taps stay on the circuit of their own nine. */
    private static Circuit numbered(final Circuit circuit, final int round) {
        final Feed feed = circuit.feed();
        final Circuit named = circuit.renamed(circuit.name() + " " + (round + 1));
        return feed.isTap()
                ? named.fedFrom(new Feed(feed.circuit() + " " + (round + 1), feed.ownFuse()))
                : named;
    }
}
