package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.DAILY_ENERGY;
import static wireworthy.rules.Quantity.SHARE_OF_TIME;

import java.util.List;
import java.util.Optional;
import wireworthy.marking.Mark;
import wireworthy.rules.Ref;
import wireworthy.working.Worked;

/** How a day's energy goes wrong: by the hours, which no single line of the working holds. */
record EnergySlips(Worked worked, Mark mark) {
    private static final double DAY = 24 * 3600.0;
    private static final double HOUR = 3600;

    /** What gives the figure, in words; empty where it is none of these. */
    Optional<String> said() {
        final List<Ref> shares =
                worked.refs(SHARE_OF_TIME).stream()
                        .filter(ref -> ref.subject() != Ref.CIRCUIT)
                        .toList();
        return mark.ref().quantity() == DAILY_ENERGY && !shares.isEmpty()
                ? key(shares).map(key -> Said.of(key, "figure", mark.understood()))
                : Optional.empty();
    }

    private Optional<String> key(final List<Ref> shares) {
        final double watts = allDay(shares) / DAY;
        final double hours = shares.stream().mapToDouble(this::seconds).sum();
        if (mark.isRounded(watts * DAY)) {
            return Optional.of("own.all-day");
        }
        if (mark.isRounded(watts * HOUR)) {
            return Optional.of("own.watts-as-energy");
        }
        return shares.size() > 1 && mark.isRounded(watts * hours)
                ? Optional.of("own.hours-added")
                : Optional.empty();
    }

    private double seconds(final Ref share) {
        return worked.value(share).orElse(Double.NaN) * DAY;
    }

    /** J with everything on all day. */
    private double allDay(final List<Ref> shares) {
        final double[] values = worked.values().clone();
        shares.forEach(share -> values[worked.plan().placeOf(share).orElseThrow()] = 1);
        return worked.plan().run(values)[worked.plan().placeOf(mark.ref()).orElseThrow()];
    }
}
