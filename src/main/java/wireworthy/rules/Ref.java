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
}
