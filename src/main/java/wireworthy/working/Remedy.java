package wireworthy.working;

import wireworthy.rules.Quantity;

/**
 * A way out of too much drop.
 *
 * @param id shorter-run, split-circuit, larger-section or higher-voltage
 * @param quantity what is changed
 * @param value SI value it has to take
 * @param text for people
 */
public record Remedy(String id, Quantity quantity, double value, String text) {}
