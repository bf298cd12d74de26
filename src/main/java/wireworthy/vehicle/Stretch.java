package wireworthy.vehicle;

import wireworthy.rules.Quantity;

/**
 * One stretch of a cable that feeds several places in turn, out and back.
 *
 * @param from a place; one stretch begins at {@code source}
 * @param given its length, section or resistance
 */
public record Stretch(String from, String to, Entries<Quantity> given) {
    public Stretch beginningAt(final String place) {
        return new Stretch(place, to, given);
    }

    public Stretch endingAt(final String place) {
        return new Stretch(from, place, given);
    }

    public Stretch with(final Quantity quantity, final String text) {
        return new Stretch(from, to, given.with(quantity, text));
    }
}
