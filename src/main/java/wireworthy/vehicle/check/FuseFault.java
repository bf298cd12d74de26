package wireworthy.vehicle.check;

import java.util.OptionalDouble;

/**
 * A short circuit right behind a fuse: the most current it may have to break.
 *
 * @param index of the circuit; {@link CheckedVehicle#WHOLE} for the main fuse
 * @param circuit name of the circuit; empty for the main fuse
 * @param chosen whether there is a fuse: chosen, or the one that fits; else it is told of its
 *     series
 * @param current A, from the supply through its inner resistance and the main cable; empty where
 *     the inner resistance is not known
 * @param breakingCapacity A the fuse can break; empty where only its maker knows
 * @param ratedVoltage V of the fuse; empty where only its maker knows
 * @param heatingTime s in which such a current heats the cable to what its insulation stands, by
 *     order of magnitude; empty where not known or above 5 s. It never says that a cable survives.
 * @param text for people
 */
public record FuseFault(
        int index,
        String circuit,
        boolean chosen,
        OptionalDouble current,
        OptionalDouble breakingCapacity,
        OptionalDouble ratedVoltage,
        OptionalDouble heatingTime,
        String text) {
    /**
     * The power of ten at or below that time, to the safe side: more would feign what no sum knows.
     */
    public OptionalDouble heatingOrder() {
        return heatingTime.isEmpty()
                ? heatingTime
                : OptionalDouble.of(
                        Math.pow(10, Math.floor(Math.log10(heatingTime.getAsDouble()))));
    }
}
