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
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Vehicle;
import wireworthy.vehicle.check.CheckedVehicle;
import wireworthy.vehicle.check.VehicleChecker;

/** One figure changed in a vehicle of 60 circuits: what each keystroke costs. */
@State(Scope.Thread)
@BenchmarkMode({Mode.AverageTime, Mode.SampleTime})
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class VehicleBench {
    private static final List<String> TYPED = List.of("4", "4.", "4.2", "4.2 ", "4.2 m");

    private final VehicleChecker checker = new VehicleChecker();
    private final Vehicle vehicle = SixtyCircuits.vehicle();
    private int next;

    /** A length typed letter by letter, in one circuit after the other. */
    @Benchmark
    public CheckedVehicle aKeystroke() {
        next++;
        final int index = next / TYPED.size() % SixtyCircuits.COUNT;
        final String text = TYPED.get(next % TYPED.size());
        return checker.check(
                vehicle.withCircuit(
                        index,
                        vehicle.circuits().get(index).withGiven(Quantity.ONE_WAY_LENGTH, text)));
    }
}
