package wireworthy.bench;

import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import wireworthy.vehicle.sheet.Mapping;
import wireworthy.vehicle.sheet.Sheet;
import wireworthy.vehicle.sheet.SheetImport;
import wireworthy.vehicle.sheet.SheetRead;
import wireworthy.vehicle.sheet.SheetReader;

/** A spreadsheet of 100,000 rows taken in by a program just started. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 0)
@Measurement(iterations = 1)
@Fork(3)
public class SheetBench {
    private static final int ROWS = 100_000;

    private final byte[] file = file();

    private static byte[] file() {
        final StringBuilder text =
                new StringBuilder("Circuit,Load,Power (W),Length,Section,Fuse (A),My drop\n");
        for (int i = 0; i < ROWS; i++) {
            text.append(
                    "circuit %d,lamp,%d.%d,%d.5 m,%s,%s,0.%d V\n"
                            .formatted(
                                    i,
                                    i % 300,
                                    i % 10,
                                    1 + i % 13,
                                    i % 3 == 0 ? "1.5 mm2" : "14 AWG",
                                    i % 11 == 0 ? "oops" : "5",
                                    i % 1000));
        }
        return text.toString().getBytes(StandardCharsets.UTF_8);
    }

    /** Read, its columns guessed, every row understood. */
    @Benchmark
    public SheetImport aHugeFile() {
        final Sheet sheet = ((SheetRead.Whole) SheetReader.read(file)).sheet();
        return SheetImport.of(sheet, Mapping.guess(sheet));
    }
}
