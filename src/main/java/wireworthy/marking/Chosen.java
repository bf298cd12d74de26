package wireworthy.marking;

import static wireworthy.rules.Quantity.*;

import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.working.Worked;

/**
 * What a wrong figure can no longer bring about, because it is given or worked besides. What is not
 * known rules nothing out.
 */
record Chosen(Worked worked) {
    private static final double EVEN = 1e-9;

    /** The most the cable carries, A; NaN where no cable is known. */
    double ceiling() {
        return at(FUSE_CEILING);
    }

    /** Whether the cable is given and carries the current of the circuit. */
    boolean cableCarries() {
        return given(SECTION)
                && (at(AMPACITY) >= at(CIRCUIT_CURRENT) * (1 - EVEN) || carries(at(SECTION)));
    }

    boolean fuseGiven() {
        return given(FUSE);
    }

    /** Whether the fuse is given and the cable carries what it lets through. */
    boolean fuseProtects() {
        return fuseGiven() && at(FUSE) <= ceiling() * (1 + EVEN);
    }

    /** Whether the next rating above a current still protects the cable. */
    boolean protectedFrom(final double amps) {
        return fuseProtects()
                || worked.plan().setting().ratingFor(amps).orElse(Double.NaN)
                        <= ceiling() * (1 + EVEN);
    }

    /** Whether a section carries the current, however long the cable. */
    boolean carries(final double section) {
        return section >= at(SECTION_FOR_AMPACITY) * (1 - EVEN);
    }

    /** Whether the volts lost are no more than may be. */
    boolean dropHolds() {
        return at(DROP) <= at(DROP_LIMIT) * (1 + EVEN);
    }

    private boolean given(final Quantity quantity) {
        return worked.typed(Ref.circuit(quantity)).isPresent();
    }

    /** As given, else as worked; NaN where neither. */
    private double at(final Quantity quantity) {
        return worked.typed(Ref.circuit(quantity))
                .map(read -> read.value())
                .orElseGet(() -> worked.value(quantity).orElse(Double.NaN));
    }
}
