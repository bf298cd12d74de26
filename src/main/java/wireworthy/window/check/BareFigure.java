package wireworthy.window.check;

import java.util.EnumSet;
import java.util.Set;
import wireworthy.record.WireSizes;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Figures;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.vehicle.Understood;

/**
 * A figure typed without its unit, in a field where only one can be meant: it is kept with that
 * unit behind it, so that what it was taken for stands in the form and in the file.
 */
final class BareFigure {
    private static final String GAUGE = "AWG";

    private static final Set<Dimension> PLAIN =
            EnumSet.of(
                    Dimension.VOLTAGE,
                    Dimension.CURRENT,
                    Dimension.POWER,
                    Dimension.CHARGE,
                    Dimension.TIME);

    /** Metres and degrees Celsius, but not where cable is sold by gauge. */
    private static final Set<Dimension> METRIC =
            EnumSet.of(Dimension.LENGTH, Dimension.TEMPERATURE);

    /** A limit may be volts or per cent, a breaking capacity amps or thousands of them. */
    private static final Set<Quantity> TWO_MEANINGS =
            EnumSet.of(Quantity.DROP_LIMIT, Quantity.BREAKING_CAPACITY);

    private BareFigure() {}

    /** What is typed, with its unit where that was left out and can be only one. */
    static String completed(final Quantity quantity, final String typed, final WireSizes sizes) {
        final String unit = unit(quantity, sizes);
        return unit.isEmpty() || !isBare(quantity, typed)
                ? typed
                : withUnit(quantity, typed, typed.strip() + " " + unit);
    }

    private static String withUnit(
            final Quantity quantity, final String typed, final String whole) {
        return Understood.of(quantity, whole) instanceof Understood.Figure ? whole : typed;
    }

    private static boolean isBare(final Quantity quantity, final String typed) {
        return Figures.read(typed, quantity.dimension(), false) instanceof Reading.Read read
                && !read.unitTyped();
    }

    private static String unit(final Quantity quantity, final WireSizes sizes) {
        final Dimension dimension = quantity.dimension();
        if (TWO_MEANINGS.contains(quantity)) {
            return "";
        }
        if (dimension == Dimension.AREA) {
            return sizes == WireSizes.MM2 ? FigureText.unit(dimension) : GAUGE;
        }
        return PLAIN.contains(dimension) || (METRIC.contains(dimension) && sizes == WireSizes.MM2)
                ? FigureText.unit(dimension)
                : "";
    }
}
