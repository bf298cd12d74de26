package wireworthy.marking;

import java.util.List;
import java.util.OptionalDouble;
import wireworthy.facts.FuseSeries;
import wireworthy.facts.FuseSeriesTable;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.rules.Setting;
import wireworthy.working.Worked;

/**
 * Whether a figure is sound: numbers within 1 % and half a unit in the third significant figure,
 * choices by their limits.
 */
final class Soundness {
    private static final double ONE_PER_CENT = 0.01;
    private static final double EVEN = 1e-9;

    private Soundness() {}

    /** Whether a typed figure is sound against a value worked for it. */
    static boolean holds(
            final Worked worked, final Ref ref, final Reading.Read typed, final double right) {
        final double value = typed.value();
        return switch (ref.quantity()) {
            case FUSE -> fuse(worked, value, right);
            case MAIN_FUSE -> same(value, right);
            case GAUGE -> value <= right + EVEN;
            case STANDARD_SECTION, SECTION_FOR_AMPACITY ->
                    value >= right * (1 - EVEN) - typed.lastDigit() / 2;
            default -> Math.abs(value - right) <= tolerance(worked, ref.quantity(), right);
        };
    }

    /** SI tolerance of a number; that of volts left after a drop goes by the drop. */
    static double tolerance(final Worked worked, final Quantity quantity, final double right) {
        final double share =
                quantity == Quantity.VOLTAGE_AT_LOAD
                        ? worked.value(Quantity.SUPPLY_VOLTAGE).orElse(right) - right
                        : right;
        return ONE_PER_CENT * Math.abs(share) + halfThirdFigure(quantity, right) + EVEN * right;
    }

    private static double halfThirdFigure(final Quantity quantity, final double right) {
        final double unit = quantity.dimension().scale();
        final double shown = Math.abs(right) / unit;
        return shown == 0 ? 0 : 0.5 * Math.pow(10, Math.floor(Math.log10(shown)) - 2) * unit;
    }

    private static boolean fuse(final Worked worked, final double value, final double right) {
        final Setting setting = worked.plan().setting();
        if (!setting.cableKnown()) {
            return same(value, right);
        }
        final OptionalDouble floor = worked.value(Quantity.FUSE_FLOOR);
        final OptionalDouble ceiling = worked.value(Quantity.FUSE_CEILING);
        return isRating(setting, value)
                && floor.isPresent()
                && ceiling.isPresent()
                && value >= floor.getAsDouble() * (1 - EVEN)
                && value <= ceiling.getAsDouble() * (1 + EVEN);
    }

    /** A rating of the series given; of any blade or strip series where none was given. */
    static boolean isRating(final Setting setting, final double amps) {
        final List<FuseSeries> series =
                setting.gave(Quantity.FUSE_SERIES)
                        ? List.of(setting.series())
                        : FuseSeriesTable.risingToMain();
        return series.stream().anyMatch(each -> each.holds(amps));
    }

    private static boolean same(final double value, final double right) {
        return Math.abs(value - right) <= EVEN * Math.abs(right);
    }
}
