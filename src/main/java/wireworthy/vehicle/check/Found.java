package wireworthy.vehicle.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
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
    /** All that was asked of the circuit itself, in the order asked. */
    static List<Found> of(final Worked worked) {
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
                problem.map(Unworkable::what).orElse(""));
    }

    private static String text(final Worked worked, final Quantity asked, final double value) {
        return Sold.result(worked.plan().setting(), asked, value);
    }
}
