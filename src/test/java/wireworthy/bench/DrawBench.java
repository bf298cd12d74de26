package wireworthy.bench;

import java.util.List;
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
import wireworthy.practice.Banks;
import wireworthy.practice.Draw;
import wireworthy.practice.Exercise;
import wireworthy.practice.Template;
import wireworthy.working.Solver;

/** Drawing the numbers of exercises until every slip stands apart, over all templates in turn. */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class DrawBench {
    private final List<Template> templates = Banks.read(List.of()).templates();
    private final Draw draw = new Draw(new Solver());
    private long seed;

    @Benchmark
    public Exercise drawnAndChecked() {
        seed++;
        return draw.exercise(templates.get((int) (seed % templates.size())), seed);
    }
}
