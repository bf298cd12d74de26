package wireworthy.bench;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import wireworthy.paper.Pages;
import wireworthy.paper.PaperSize;
import wireworthy.paper.schedule.Schedule;
import wireworthy.vehicle.check.CheckedVehicle;
import wireworthy.vehicle.check.VehicleChecker;

/**
 * The circuit schedule of a vehicle of 60 circuits, from the start of the process: how long it
 * takes, and whether the same vehicle gives the same bytes. {@code SchedulePages FILE} keeps it.
 */
public final class SchedulePages {

    private SchedulePages() {}

    public static void main(final String[] args) throws IOException {
        Pages.expect();
        final CheckedVehicle checked = new VehicleChecker().check(SixtyCircuits.vehicle());
        final double ready = sinceStart();
        final byte[] first = Schedule.pdf(checked, PaperSize.A4);
        System.out.printf(
                "vehicle checked %.2f s after process start, pages %.2f s later; CPU %.2f s%n",
                ready, sinceStart() - ready, cpu());
        final long again = System.nanoTime();
        final CheckedVehicle once = new VehicleChecker().check(SixtyCircuits.vehicle());
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
}
