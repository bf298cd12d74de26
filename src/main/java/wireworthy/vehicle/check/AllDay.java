package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.*;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import wireworthy.marking.Mark;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Circuit;
import wireworthy.working.Line;
import wireworthy.working.Telling;
import wireworthy.working.Worked;

/** Says of an energy that it goes by loads that run day and night, because no hours are known. */
final class AllDay {
    /** What a day's energy goes into. */
    private static final Set<Quantity> BY_HOURS =
            EnumSet.of(DAILY_ENERGY, RUNTIME, CAPACITY_NEEDED, ARRAY_POWER);

    private AllDay() {}

    /** Whether the hours of any load of a circuit are not known. */
    static boolean in(final Circuit circuit) {
        return circuit.loads().stream().anyMatch(load -> !load.hoursKnown());
    }

    static Found told(final Found found) {
        return found.quantity() == DAILY_ENERGY && found.value().isPresent()
                ? new Found(
                        found.quantity(),
                        found.value(),
                        Said.of("all-day", "figure", found.text()),
                        found.why())
                : found;
    }

    static Line told(final Line line) {
        return line.ref().quantity() == DAILY_ENERGY
                ? new Line(
                        line.ref(),
                        line.subject(),
                        line.rule(),
                        line.formula(),
                        line.numbers(),
                        line.value(),
                        line.source(),
                        Said.of("all-day.line"))
                : line;
    }

    /** An own figure may go by hours that are not put in: it is no slip that it differs. */
    static List<Mark> told(final List<Mark> marks, final Worked worked) {
        return marks.stream().map(mark -> told(mark, worked)).toList();
    }

    private static Mark told(final Mark mark, final Worked worked) {
        final Quantity quantity = mark.ref().quantity();
        if (mark.isSound() || mark.asksBack() || !BY_HOURS.contains(quantity)) {
            return mark;
        }
        final double value = worked.value(mark.ref()).orElse(Double.NaN);
        return mark.inQuestion(
                Said.of(
                        "own.no-hours",
                        "figure",
                        mark.understood(),
                        "right",
                        Telling.exact(quantity, value)));
    }
}
