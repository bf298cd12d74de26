package wireworthy.marking;

import static wireworthy.rules.Quantity.*;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.rules.Voltages;
import wireworthy.working.Worked;

/**
 * Whether a figure is what the watts of all loads come to at the voltage of another system: a slip
 * at one line knows only one load and only the likeliest of the other two.
 */
final class OtherVoltage {
    /** What hangs on the voltage only through the watts. */
    private static final Set<Quantity> BY_WATTS =
            EnumSet.of(LOAD_CURRENT, SUPPLY_CURRENT, CIRCUIT_CURRENT, FUSE_FLOOR, DROP);

    /** What the voltage itself goes into, at the last line or from the beginning. */
    private static final Set<Quantity> BY_VOLTS = EnumSet.of(DROP_PERCENT, VOLTAGE_AT_LOAD);

    private static final List<Double> MAINS = List.of(230.0, 120.0);

    private static final int ENOUGH_FIGURES = 2;

    private OtherVoltage() {}

    /** The voltage used, V; empty where it is none of the systems nor of the mains. */
    static Optional<Double> of(final Worked worked, final Ref ref, final Reading.Read read) {
        return worked.plan()
                .placeOf(Ref.circuit(SUPPLY_VOLTAGE))
                .filter(place -> byVolts(ref) || onlyByWatts(worked, ref))
                .filter(place -> read.significantDigits() >= ENOUGH_FIGURES)
                .flatMap(place -> of(worked, ref, read, place));
    }

    static boolean byVolts(final Ref ref) {
        return BY_VOLTS.contains(ref.quantity());
    }

    private static boolean onlyByWatts(final Worked worked, final Ref ref) {
        return BY_WATTS.contains(ref.quantity())
                && has(worked, LOAD_POWER)
                && !has(worked, RESISTANCE);
    }

    private static boolean has(final Worked worked, final Quantity quantity) {
        return worked.question().figures().keySet().stream()
                .anyMatch(given -> given.quantity() == quantity);
    }

    private static Optional<Double> of(
            final Worked worked, final Ref ref, final Reading.Read read, final int place) {
        final double nominal = Voltages.nominal(worked.values()[place]);
        return Stream.concat(Voltages.SYSTEMS.stream(), MAINS.stream())
                .filter(volts -> volts != nominal)
                .filter(
                        volts ->
                                Fit.holds(ref, read, throughout(worked, ref, place, volts))
                                        || Fit.holds(ref, read, atLast(worked, ref, place, volts)))
                .findFirst();
    }

    private static double throughout(
            final Worked worked, final Ref ref, final int place, final double volts) {
        final double[] values = worked.values().clone();
        values[place] = volts;
        return worked.plan().run(values)[worked.plan().placeOf(ref).orElseThrow()];
    }

    /** Only in the line of the figure itself; NaN where that has no voltage of its own. */
    private static double atLast(
            final Worked worked, final Ref ref, final int place, final double volts) {
        final double right = worked.value(ref).orElse(Double.NaN);
        return switch (ref.quantity()) {
            case DROP_PERCENT -> right * worked.values()[place] / volts;
            case VOLTAGE_AT_LOAD -> right - worked.values()[place] + volts;
            default -> Double.NaN;
        };
    }
}
