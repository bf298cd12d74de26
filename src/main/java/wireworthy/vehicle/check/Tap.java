package wireworthy.vehicle.check;

import java.util.OptionalDouble;

/**
 * A circuit tapped off the cable of another, as a load of that cable.
 *
 * @param current A; empty where not known yet
 * @param shareOfTime of one, on average; empty where not known
 * @param startMultiple starting over running current; empty where nothing starts
 */
record Tap(
        String name,
        OptionalDouble current,
        OptionalDouble shareOfTime,
        OptionalDouble startMultiple) {}
