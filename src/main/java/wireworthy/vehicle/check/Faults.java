package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.*;

import java.util.Optional;
import java.util.OptionalDouble;
import wireworthy.facts.FuseSeries;
import wireworthy.facts.StandardSizes;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.working.Caution;
import wireworthy.working.Danger;

/** What a short circuit behind a fuse asks of it. */
final class Faults {
    private Faults() {}

    static FuseFault of(
            final int index,
            final String circuit,
            final OptionalDouble current,
            final Sums sums,
            final FuseWindow window,
            final OptionalDouble heating) {
        final FuseSeries series = window.series();
        final boolean chosen = window.inUse().isPresent();
        final OptionalDouble breaking = typedOr(sums, BREAKING_CAPACITY, series.breakingCapacity());
        final OptionalDouble volts =
                typedOr(
                        sums,
                        FUSE_VOLTAGE,
                        series.voltageRatings().stream().mapToDouble(v -> v).findFirst());
        final FuseFault silent =
                new FuseFault(index, circuit, chosen, current, breaking, volts, heating, "");
        return new FuseFault(
                index, circuit, chosen, current, breaking, volts, heating, text(silent, series));
    }

    /** What was typed, or else what is known of the whole series. */
    private static OptionalDouble typedOr(
            final Sums sums, final Quantity quantity, final OptionalDouble otherwise) {
        final OptionalDouble typed = sums.typed(quantity);
        return typed.isPresent() ? typed : otherwise;
    }

    private static String text(final FuseFault fault, final FuseSeries series) {
        if (fault.current().isEmpty()) {
            return Said.of("fault.unknown");
        }
        return Said.of(
                        fault.chosen() ? "fault" : "fault.none",
                        "amps",
                        FigureText.roughlyUp(fault.current().getAsDouble(), Dimension.CURRENT),
                        "breaks",
                        breaks(fault, series))
                + heats(fault.heatingOrder());
    }

    private static String breaks(final FuseFault fault, final FuseSeries series) {
        if (fault.breakingCapacity().isEmpty()) {
            return Said.of("fault.maker");
        }
        final String amps = amps(fault.breakingCapacity().getAsDouble());
        return Said.of(
                fault.chosen() ? "fault.breaks" : "fault.breaks.none",
                "amps",
                amps,
                "series",
                series.words());
    }

    private static String heats(final OptionalDouble heating) {
        return heating.isEmpty()
                ? ""
                : " "
                        + Said.of(
                                "fault.heats",
                                "time",
                                FigureText.of(heating.getAsDouble(), Dimension.SHORT_TIME));
    }

    /** Where the fuse can't break such a current. */
    static Optional<Caution> caution(final FuseFault fault) {
        final double current = fault.current().orElse(0);
        final double breaking = fault.breakingCapacity().orElse(Double.POSITIVE_INFINITY);
        return current > breaking && !StandardSizes.same(current, breaking)
                ? Optional.of(tooMuch(fault, current, breaking))
                : Optional.empty();
    }

    private static Caution tooMuch(
            final FuseFault fault, final double current, final double breaking) {
        return new Caution(
                "breaking-capacity-low",
                Danger.FIRE,
                Said.of(
                        fault.chosen() ? "fault.too-much" : "fault.too-much.none",
                        "current",
                        amps(current),
                        "breaking",
                        amps(breaking)));
    }

    private static String amps(final double value) {
        return FigureText.of(value, Dimension.CURRENT);
    }
}
