package wireworthy.bench;

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
import wireworthy.marking.Mark;
import wireworthy.marking.Marker;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.working.Asking;
import wireworthy.working.Worked;

/** Marking one wrong answer with all single slips on the way, and one that no slip explains. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class MarkBench {
    private static final String CIRCUIT =
            """
            {"given": {"load-power": "97 W", "supply-voltage": "12.6 V", "one-way-length": "5.5 m",
                       "section": "2.5 mm2"},
             "find": ["drop-percent", "voltage-at-load"]}
            """;
    private static final Ref PERCENT = Ref.circuit(Quantity.DROP_PERCENT);

    private final Worked worked = Asking.worked(CIRCUIT);

    /** The cable counted one way: half the drop. */
    @Benchmark
    public Mark oneSlip() {
        return Marker.mark(worked, PERCENT, "2.31 %");
    }

    /** A figure of no single slip, so that pairs are tried too. */
    @Benchmark
    public Mark noSingleSlip() {
        return Marker.mark(worked, PERCENT, "7.77 %");
    }
}
