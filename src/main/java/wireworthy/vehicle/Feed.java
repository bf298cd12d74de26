package wireworthy.vehicle;

/**
 * Where a circuit is fed from.
 *
 * @param circuit name of the circuit whose cable it is tapped off; empty for the fuse board
 * @param ownFuse whether a fuse sits where it leaves that cable; at the board one always does
 */
public record Feed(String circuit, boolean ownFuse) {
    /** From the fuse board, through a fuse of its own. */
    public static final Feed BOARD = new Feed("", true);

    /** Whether it is tapped off the cable of another circuit. */
    public boolean isTap() {
        return !circuit.isBlank();
    }
}
