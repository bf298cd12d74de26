package wireworthy.rules;

/**
 * A quantity of a subject. Subject 0 is the circuit itself; 1, 2, ... are the loads of a list, in
 * its order.
 */
public record Ref(Quantity quantity, int subject) {
    public static final int CIRCUIT = 0;

    /** The circuit's own. */
    public static Ref circuit(final Quantity quantity) {
        return new Ref(quantity, CIRCUIT);
    }

    /** Spelt out, because maps of references are asked all the time. */
    @Override
    public boolean equals(final Object other) {
        return other instanceof Ref ref && ref.quantity == quantity && ref.subject == subject;
    }

    @Override
    public int hashCode() {
        return 31 * quantity.hashCode() + subject;
    }
}
