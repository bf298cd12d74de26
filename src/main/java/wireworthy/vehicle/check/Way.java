package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.*;

import java.util.List;
import java.util.OptionalDouble;
import wireworthy.facts.Copper;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.working.LoadsApart;
import wireworthy.working.Remedies;
import wireworthy.working.Remedy;
import wireworthy.working.Worked;

/**
 * A way out of too much drop, and what it costs in copper.
 *
 * @param copper kg more than now, less than nothing where it saves some; empty where section or
 *     length is not known
 */
public record Way(Remedy remedy, OptionalDouble copper) {
    /**
     * All ways out, by the measure by which a circuit is judged; none where the limit holds.
     *
     * @param before V lost before its cable begins, once that is warm
     */
    static List<Way> of(final Worked worked, final double before) {
        return Remedies.warmToo(worked, before).stream()
                .map(remedy -> new Way(remedy, copper(worked, remedy)))
                .toList();
    }

    /** The way with its cost, for people. */
    public String text() {
        return copper.isEmpty() ? remedy.text() : remedy.text() + " " + cost(copper.getAsDouble());
    }

    private static String cost(final double kilograms) {
        final double grams = Math.abs(kilograms) * 1000;
        if (grams < 1) {
            return Said.of("copper.none");
        }
        final String mass =
                grams < 1000
                        ? FigureText.number(grams, Dimension.FACTOR, 2) + " g"
                        : FigureText.number(grams / 1000, Dimension.FACTOR, 2) + " kg";
        return Said.of(kilograms > 0 ? "copper.more" : "copper.less", "mass", mass);
    }

    private static OptionalDouble copper(final Worked worked, final Remedy remedy) {
        final OptionalDouble section = worked.value(SECTION);
        final OptionalDouble loop = worked.value(LOOP_LENGTH);
        final boolean none = remedy.quantity() == SECTION_FOR_DROP;
        if (section.isEmpty() || loop.isEmpty() || none) {
            return OptionalDouble.empty();
        }
        final double now = section.getAsDouble() * loop.getAsDouble() * Copper.DENSITY_KG_PER_M3;
        return OptionalDouble.of(now * (times(worked, remedy) - 1));
    }

    /** How many times the copper of now. */
    private static double times(final Worked worked, final Remedy remedy) {
        return switch (remedy.id()) {
            case "shorter-run" -> over(remedy.value(), worked.value(ONE_WAY_LENGTH));
            case "split-circuit" -> LoadsApart.circuits(worked, remedy.value()).orElse(1);
            case "larger-section" -> over(remedy.value(), worked.value(SECTION));
            default -> 1;
        };
    }

    private static double over(final double value, final OptionalDouble now) {
        return value / now.orElse(value);
    }
}
