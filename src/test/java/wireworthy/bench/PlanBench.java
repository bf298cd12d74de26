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
import wireworthy.rules.Reading;
import wireworthy.working.Asking;
import wireworthy.working.Plan;
import wireworthy.working.Worked;

/** A whole circuit, from three loads to the standard section and the fuse, numbers only. */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class PlanBench {
    private static final String CIRCUIT =
            """
            {"given": {"loads": [{"name": "lamps", "power": "4 W", "count": 6},
                                 {"name": "radio", "current": "0.9 A"},
                                 {"name": "fan", "power": "30 W"}],
                       "supply-voltage": "12 V", "one-way-length": "7.5 m", "drop-limit": "3 %",
                       "ambient-temperature": "45 degC", "bundled": "4"},
             "find": ["circuit-current", "fuse", "standard-section"]}
            """;

    private final Plan plan;
    private final double[] givens;

    /** Finds the plan once. */
    public PlanBench() {
        final Worked worked = Asking.worked(CIRCUIT);
        plan = worked.plan();
        givens =
                worked.question().figures().values().stream()
                        .mapToDouble(Reading.Read::value)
                        .toArray();
    }

    /** One run of the plan. */
    @Benchmark
    public double[] wholeCircuit() {
        return plan.run(plan.start(givens));
    }
}
