package wireworthy.marking;

import java.util.List;
import wireworthy.facts.FuseSeries;
import wireworthy.facts.FuseSeriesTable;
import wireworthy.rules.Dimension;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.rules.Setting;
import wireworthy.working.Plan;

/**
 * Whether a figure is sound: numbers within 1 % and half a unit in the third significant figure,
 * choices by their limits.
 */
final class Soundness {
    private static final double ONE_PER_CENT = 0.01;
    private static final double EVEN = 1e-9;

    private Soundness() {}

    /**
     * Whether a typed figure is sound against values worked for it.
     *
     * @param values SI by place of the plan
     */
    static boolean holds(
            final Plan plan, final double[] values, final Ref ref, final Reading.Read typed) {
        final double value = typed.value();
        final double right = at(plan, values, ref.quantity(), ref);
        return switch (ref.quantity()) {
            case FUSE -> fuse(plan, values, value, right);
            case MAIN_FUSE -> same(value, right);
            case GAUGE -> value <= right + EVEN;
            case STANDARD_SECTION, SECTION_FOR_AMPACITY ->
                    value >= right * (1 - EVEN) - typed.lastDigit() / 2;
            default -> Math.abs(value - right) <= tolerance(plan, values, ref.quantity(), right);
        };
    }

    /** Whether a figure is less than nothing where nothing is the least there is. */
    static boolean belowNothing(final Ref ref, final Reading.Read typed) {
        final Dimension dimension = ref.quantity().dimension();
        return typed.value() < 0
                && dimension != Dimension.TEMPERATURE
                && dimension != Dimension.GAUGE;
    }

    /** SI tolerance of a number; that of volts left after a drop goes by the drop. */
    private static double tolerance(
            final Plan plan, final double[] values, final Quantity quantity, final double right) {
        final double share =
                quantity == Quantity.VOLTAGE_AT_LOAD
                        ? at(plan, values, Quantity.SUPPLY_VOLTAGE) - right
                        : right;
        return ONE_PER_CENT * Math.abs(share) + halfThirdFigure(quantity, right) + EVEN * right;
    }

    private static double halfThirdFigure(final Quantity quantity, final double right) {
        final double unit = quantity.dimension().scale();
        final double shown = Math.abs(right) / unit;
        return shown == 0 ? 0 : 0.5 * Math.pow(10, Math.floor(Math.log10(shown)) - 2) * unit;
    }

    private static boolean fuse(
            final Plan plan, final double[] values, final double value, final double right) {
        if (!plan.setting().cableKnown()) {
            return same(value, right);
        }
        return isRating(plan.setting(), value)
                && value >= at(plan, values, Quantity.FUSE_FLOOR) * (1 - EVEN)
                && value <= at(plan, values, Quantity.FUSE_CEILING) * (1 + EVEN);
    }

    private static double at(final Plan plan, final double[] values, final Quantity quantity) {
        return at(plan, values, quantity, Ref.circuit(quantity));
    }

    /** NaN where the plan has no such value, so that no comparison with it holds. */
    private static double at(
            final Plan plan, final double[] values, final Quantity quantity, final Ref ref) {
        return plan.placeOf(new Ref(quantity, ref.subject()))
                .map(place -> values[place])
                .orElse(Double.NaN);
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
