package wireworthy.vehicle;

import wireworthy.rules.Quantity;

/**
 * A part of a vehicle: what is known of it, and what the builder worked out for it.
 *
 * @param given what is known, by quantity
 * @param answers the builder's own figures, by quantity; they are marked, never overwritten
 */
public record Part(Entries<Quantity> given, Entries<Quantity> answers) {
    public static final Part EMPTY = new Part(Entries.none(), Entries.none());

    public Part withGiven(final Quantity quantity, final String text) {
        return new Part(given.with(quantity, text), answers);
    }

    public Part withAnswer(final Quantity quantity, final String text) {
        return new Part(given, answers.with(quantity, text));
    }
}
