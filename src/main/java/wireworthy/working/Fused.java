package wireworthy.working;

import static wireworthy.rules.Quantity.*;

import java.util.OptionalDouble;
import wireworthy.rules.Ref;

/** Whether a cable can be fused: what overheats is not mended by what only lowers its drop. */
final class Fused {
    private static final double EVEN = 1e-9;

    private final Worked worked;

    Fused(final Worked worked) {
        this.worked = worked;
    }

    /**
     * Whether a fuse of the series lets the current through and protects the cable as it is; true
     * where one of the two is not known.
     *
     * @param share of the current of now that is left
     */
    boolean fits(final double share) {
        final OptionalDouble floor = worked.value(FUSE_FLOOR);
        final OptionalDouble ceiling = worked.value(FUSE_CEILING);
        if (floor.isEmpty() || ceiling.isEmpty()) {
            return true;
        }
        final OptionalDouble rating =
                worked.plan().setting().series().atOrAbove(floor.getAsDouble() * share);
        return rating.isPresent() && rating.getAsDouble() <= ceiling.getAsDouble() * (1 + EVEN);
    }

    /** Whether the fuse typed would let the cable overheat. */
    boolean aboveCable() {
        final OptionalDouble ceiling = worked.value(FUSE_CEILING);
        return worked.typed(Ref.circuit(FUSE)).isPresent()
                && ceiling.isPresent()
                && worked.value(FUSE).orElse(0) > ceiling.getAsDouble() * (1 + EVEN);
    }
}
