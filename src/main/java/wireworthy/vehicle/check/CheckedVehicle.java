package wireworthy.vehicle.check;

import java.util.List;
import java.util.OptionalDouble;
import wireworthy.vehicle.Vehicle;
import wireworthy.working.Caution;

/**
 * A vehicle with everything that can be worked of it.
 *
 * @param circuits in the order of the vehicle
 * @param supply bank, energy, runtime and charging
 * @param main main fuse and main cable
 * @param mainFuse which main fuses fit
 * @param mainVolts the volts lost in the main cable
 * @param totalCurrent A with everything on; empty where the current of any circuit is not known
 * @param simultaneousCurrent A of what can run together; empty where not known
 * @param faults a short circuit behind each fuse, the main fuse first
 * @param cautions of all circuits and of the whole, worst first
 */
public record CheckedVehicle(
        Vehicle vehicle,
        List<CheckedCircuit> circuits,
        CheckedPart supply,
        CheckedPart main,
        FuseWindow mainFuse,
        VoltsLost mainVolts,
        OptionalDouble totalCurrent,
        OptionalDouble simultaneousCurrent,
        List<FuseFault> faults,
        List<Placed> cautions) {
    /** Index of a caution that is about no single circuit. */
    public static final int WHOLE = -1;

    /**
     * A caution and the circuit it is about.
     *
     * @param circuit its index; {@link #WHOLE} for the main fuse, the main cable or the supply
     * @param name of the circuit; empty for the whole
     */
    public record Placed(int circuit, String name, Caution caution) {}
}
