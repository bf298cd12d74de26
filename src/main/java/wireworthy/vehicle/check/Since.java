package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.SHARE_OF_TIME;
import static wireworthy.rules.Quantity.TIME;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import wireworthy.rules.Ref;
import wireworthy.working.Question;
import wireworthy.working.Telling;
import wireworthy.working.Worked;

/**
 * What was changed of all that a figure is worked from.
 *
 * @param changed in the order of the working before
 */
record Since(Ref ref, Worked before, Worked now, List<Ref> changed) {
    private static final int MOST_NAMED = 2;
    private static final double SAME = 1e-9;
    private static final double DAY = 24 * 3600.0;

    /** Empty where nothing was changed, or the figure can't be worked now. */
    static Optional<Since> of(final Ref ref, final Worked before, final Worked now) {
        final Set<Ref> read = new LinkedHashSet<>();
        read(before, ref).forEach(read::add);
        read(now, ref).forEach(read::add);
        final List<Ref> changed = read.stream().filter(it -> differs(before, now, it)).toList();
        return now.value(ref).isEmpty() || sameGivens(before.question(), now.question())
                ? Optional.empty()
                : Optional.of(new Since(ref, before, now, changed));
    }

    private static boolean sameGivens(final Question before, final Question now) {
        return before.figures().equals(now.figures())
                && before.names().equals(now.names())
                && before.available().equals(now.available());
    }

    /** The givens and assumptions on the way to a figure. */
    private static List<Ref> read(final Worked worked, final Ref ref) {
        final List<Integer> worksOut =
                worked.wayTo(ref).stream().map(step -> step.output()).toList();
        return worked.wayTo(ref).stream()
                .flatMapToInt(step -> IntStream.of(step.inputs()))
                .distinct()
                .filter(place -> !worksOut.contains(place))
                .mapToObj(worked.plan()::at)
                .toList();
    }

    private static boolean differs(final Worked before, final Worked now, final Ref ref) {
        final double was = value(before, ref);
        return !(Math.abs(was - value(now, ref)) <= SAME * Math.abs(was))
                || !before.question().subject(ref).equals(subject(now, ref));
    }

    private static double value(final Worked worked, final Ref ref) {
        return ref.subject() > worked.question().loads().size()
                ? Double.NaN
                : worked.value(ref).orElse(Double.NaN);
    }

    private static String subject(final Worked worked, final Ref ref) {
        return ref.subject() > worked.question().loads().size()
                ? ""
                : worked.question().subject(ref);
    }

    /** That the figure still goes with what stood there before, and what it is now. */
    String stillSound(final String figure) {
        return Said.of("own.earlier", "figure", figure, "earlier", earlier(), "right", right());
    }

    /** The same behind what is said of the figure. */
    String wasSound() {
        return Said.of("own.was-sound", "earlier", earlier());
    }

    private String right() {
        return Telling.exact(ref.quantity(), now.value(ref).orElseThrow());
    }

    private String earlier() {
        if (!before.question().loads().equals(now.question().loads())) {
            return Said.of("own.earlier.loads");
        }
        final boolean known = changed.stream().allMatch(it -> valueBefore(it).isPresent());
        return changed.isEmpty() || changed.size() > MOST_NAMED || !known
                ? Said.of("own.earlier.all")
                : changed.stream().map(this::named).collect(Collectors.joining(and()));
    }

    private static String and() {
        return Said.of("own.earlier.and");
    }

    private OptionalDouble valueBefore(final Ref given) {
        final double value = value(before, given);
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private String named(final Ref given) {
        final double value = valueBefore(given).orElseThrow();
        final String load = before.question().subject(given);
        if (given.quantity() == SHARE_OF_TIME) {
            final String hours = Telling.exact(TIME, value * DAY);
            return Said.of("own.earlier.hours", "load", load, "hours", hours);
        }
        return Said.of(
                load.isEmpty() ? "own.earlier.one" : "own.earlier.of-load",
                "quantity",
                given.quantity().words(),
                "load",
                load,
                "value",
                Telling.exact(given.quantity(), value));
    }
}
