package wireworthy.vehicle.check;

import java.util.List;
import java.util.OptionalDouble;
import wireworthy.vehicle.Circuit;

/**
 * All that the sums of a circuit depend on: as long as it is equal, they need no working again.
 *
 * @param volts of the supply, as text; empty where not known
 * @param taps what is tapped off its cable
 * @param fault A of a short circuit right behind its fuse; empty where not known
 */
record CircuitInput(Circuit circuit, String volts, List<Tap> taps, OptionalDouble fault) {}
