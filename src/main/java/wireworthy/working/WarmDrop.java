package wireworthy.working;

import static wireworthy.rules.Quantity.*;

import java.util.OptionalDouble;
import wireworthy.facts.Class5Copper;
import wireworthy.facts.Copper;
import wireworthy.rules.Dimension;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;

/**
 * The drop of a real cable that has grown warm: the highest resistance IEC 60228 allows a flexible
 * (class 5) conductor, at 60 degC.
 */
public final class WarmDrop {
    private static final double WARM = 60;

    private WarmDrop() {}

    /**
     * The drop in V; empty where current, length or section is not known, where the section is none
     * of the table, and where the resistance was given.
     */
    public static OptionalDouble of(final Worked worked) {
        final OptionalDouble section = worked.value(SECTION);
        final OptionalDouble length = worked.value(LOOP_LENGTH);
        final OptionalDouble current = worked.value(CIRCUIT_CURRENT);
        final boolean known = section.isPresent() && length.isPresent() && current.isPresent();
        if (!known || resistanceGiven(worked)) {
            return OptionalDouble.empty();
        }
        return ohmsPerMetre(section.getAsDouble()).stream()
                .map(ohms -> ohms * length.getAsDouble() * current.getAsDouble())
                .findFirst();
    }

    private static boolean resistanceGiven(final Worked worked) {
        return given(worked, RESISTIVITY)
                || given(worked, RESISTANCE_PER_LENGTH)
                || worked.plan().setting().aluminium();
    }

    private static boolean given(final Worked worked, final Quantity quantity) {
        return worked.typed(Ref.circuit(quantity)).isPresent();
    }

    private static OptionalDouble ohmsPerMetre(final double section) {
        return Class5Copper.maxResistanceMohmPerM(section / Dimension.AREA.scale()).stream()
                .map(mohm -> mohm / 1000 * (1 + Copper.ALPHA_20 * (WARM - 20)))
                .findFirst();
    }
}
