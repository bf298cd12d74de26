package wireworthy.working;

import java.util.Optional;
import wireworthy.rules.Direction;

/**
 * How a value is come by.
 *
 * @param by the line that gives it; empty where it is given or assumed
 * @param cost the cost of all lines to it
 * @param assumed whether an assumption feeds it
 */
record Road(Optional<Direction> by, double cost, boolean assumed) {}
