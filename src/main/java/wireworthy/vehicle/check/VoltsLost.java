package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.DROP;

import java.util.List;
import java.util.OptionalDouble;
import wireworthy.working.Remedies;
import wireworthy.working.WarmDrop;

/**
 * The volts lost in a cable beside what may be lost.
 *
 * @param drop V in cold copper; empty where not known
 * @param limit V that may be lost; empty where not known
 * @param warm V where the cable is warm and as resistive as IEC 60228 class 5 allows; empty where
 *     not known
 * @param ways out of too much drop
 */
public record VoltsLost(
        OptionalDouble drop, OptionalDouble limit, OptionalDouble warm, List<Way> ways) {
    public VoltsLost {
        ways = List.copyOf(ways);
    }

    static VoltsLost of(final Sums sums) {
        return new VoltsLost(
                sums.value(DROP),
                sums.around().map(Remedies::limit).orElseGet(OptionalDouble::empty),
                sums.around().map(WarmDrop::of).orElseGet(OptionalDouble::empty),
                sums.ways());
    }
}
