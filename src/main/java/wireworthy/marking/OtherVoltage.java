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

    private static final List<Double> MAINS = List.of(230.0, 120.0);

    private static final int ENOUGH_FIGURES = 2;

    private OtherVoltage() {}

    /** The voltage used, V; empty where it is none of the systems nor of the mains. */
    static Optional<Double> of(final Worked worked, final Ref ref, final Reading.Read read) {
        return worked.plan()
                .placeOf(Ref.circuit(SUPPLY_VOLTAGE))
                .filter(place -> BY_WATTS.contains(ref.quantity()) && onlyByWatts(worked))
                .filter(place -> read.significantDigits() >= ENOUGH_FIGURES)
                .flatMap(place -> of(worked, ref, read, place));
    }

    private static boolean onlyByWatts(final Worked worked) {
        return has(worked, LOAD_POWER) && !has(worked, RESISTANCE);
    }

    private static boolean has(final Worked worked, final Quantity quantity) {
        return worked.question().figures().keySet().stream()
                .anyMatch(given -> given.quantity() == quantity);
    }

    private static Optional<Double> of(
            final Worked worked, final Ref ref, final Reading.Read read, final int place) {
        final int asked = worked.plan().placeOf(ref).orElseThrow();
        final double nominal = Voltages.nominal(worked.values()[place]);
        return Stream.concat(Voltages.SYSTEMS.stream(), MAINS.stream())
                .filter(volts -> volts != nominal)
                .filter(volts -> Fit.holds(ref, read, at(worked, place, volts)[asked]))
                .findFirst();
    }

    private static double[] at(final Worked worked, final int place, final double volts) {
        final double[] values = worked.values().clone();
        values[place] = volts;
        return worked.plan().run(values);
    }
}
