package wireworthy.vehicle.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wireworthy.facts.StandardSizes;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.working.HoldingSection;
import wireworthy.working.Sold;
import wireworthy.working.Unworkable;
import wireworthy.working.Worked;

/**
 * A value that was worked, or why it wasn't.
 *
 * @param value SI; empty where it can't be worked or nothing fits
 * @param text the value for people; "nothing fits" where no rating or size does
 * @param why what it would take to work it; empty where it was worked
 */
public record Found(Quantity quantity, OptionalDouble value, String text, String why) {
    /**
     * All that was asked of the circuit itself, in the order asked.
     *
     * @param around the same as widely as the givens allow
     */
    static List<Found> of(final Worked worked, final Worked around) {
        return of(worked).stream().map(found -> found.warm(around)).toList();
    }

    /** A size to take holds in warm copper, too; the one of the working is named beside it. */
    private Found warm(final Worked around) {
        if (quantity != Quantity.STANDARD_SECTION || value.isEmpty()) {
            return this;
        }
        final OptionalDouble holding = HoldingSection.of(around);
        if (holding.isEmpty()) {
            return new Found(quantity, value, Said.of("size.cold", "cold", text), why);
        }
        final boolean same = StandardSizes.same(holding.getAsDouble(), value.getAsDouble());
        final String larger = text(around, quantity, holding.getAsDouble());
        return same
                ? this
                : new Found(
                        quantity, holding, Said.of("size.warm", "warm", larger, "cold", text), why);
    }

    private static List<Found> of(final Worked worked) {
        final List<Found> all = new ArrayList<>();
        for (final Quantity asked : worked.question().find()) {
            final List<Ref> refs = worked.refs(asked);
            if (refs.isEmpty() || refs.equals(List.of(Ref.circuit(asked)))) {
                all.add(of(worked, asked));
            }
        }
        return List.copyOf(all);
    }

    private static Found of(final Worked worked, final Quantity asked) {
        final OptionalDouble value = worked.value(asked);
        final Optional<Unworkable> problem = worked.problem(asked);
        return new Found(
                asked,
                value,
                problem.isPresent() ? "" : text(worked, asked, value.orElse(Double.NaN)),
                problem.map(InWords::of).orElse(""));
    }

    private static String text(final Worked worked, final Quantity asked, final double value) {
        return Sold.result(worked.plan().setting(), asked, value);
    }
}
