package wireworthy.working;

import static wireworthy.rules.Quantity.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
    private static final double EVEN = 1e-9;

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

    /**
     * The drop in V with a cable of another section, as {@link #of}. A section that is none of the
     * table is taken to be made like the next thinner one of it, but for gauges, which are not made
     * to that standard.
     */
    static OptionalDouble at(final Worked worked, final double section) {
        final OptionalDouble length = worked.value(LOOP_LENGTH);
        final OptionalDouble current = worked.value(CIRCUIT_CURRENT);
        if (length.isEmpty() || current.isEmpty() || resistanceGiven(worked)) {
            return OptionalDouble.empty();
        }
        final OptionalDouble made =
                worked.plan().setting().table().byGauge()
                        ? OptionalDouble.of(section)
                        : madeLike(section);
        return made.stream()
                .flatMap(like -> scaled(like, section).stream())
                .map(ohms -> ohms * length.getAsDouble() * current.getAsDouble())
                .findFirst();
    }

    private static OptionalDouble madeLike(final double section) {
        return Class5Copper.sections().stream()
                .mapToDouble(mm2 -> mm2 * Dimension.AREA.scale())
                .filter(each -> each <= section * (1 + EVEN))
                .max();
    }

    private static OptionalDouble scaled(final double like, final double section) {
        return ohmsPerMetre(like).stream().map(ohms -> ohms * like / section).findFirst();
    }

    /**
     * The same cables as resistive as that; empty where a section is none of the table, and where
     * the resistivity was given.
     *
     * @param network of stretches known by length and section alone
     * @param beside what was given beside it
     */
    public static Optional<CableNetwork> of(final CableNetwork network, final Worked beside) {
        final double resistivity = beside.value(RESISTIVITY).orElse(Double.NaN);
        final List<CableNetwork.Stretch> warm = new ArrayList<>();
        for (final CableNetwork.Stretch stretch : network.stretches()) {
            final double loop = stretch.resistance() * stretch.section() / resistivity;
            ohmsPerMetre(stretch.section()).stream()
                    .mapToObj(ohms -> stretch.withResistance(ohms * loop))
                    .forEach(warm::add);
        }
        final boolean known = warm.size() == network.stretches().size();
        return known && !resistanceGiven(beside)
                ? Optional.of(network.withStretches(warm))
                : Optional.empty();
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
