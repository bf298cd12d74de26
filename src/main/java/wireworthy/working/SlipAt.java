package wireworthy.working;

import wireworthy.rules.Slip;

/**
 * A slip at a line of a plan.
 *
 * @param step which line
 * @param slip the slip
 * @param inputs places it reads, in the order of its own formula
 */
public record SlipAt(int step, Slip slip, int[] inputs) {}
