package wireworthy.rules;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import wireworthy.texts.Language;

/**
 * Shows a figure to people: three significant figures unless told otherwise, a space, the unit.
 * Trailing zeros are dropped, counts are never rounded; the decimal sign is that of the language in
 * use. Every text can be typed back and is read as the same figure. Values must be finite.
 */
public final class FigureText {

    private static final int ROUGHLY = 2;
    private static final int FIGURES = 3;

    /** Of the lines of a working, and of every limit: a limit is told alike wherever it stands. */
    private static final int IN_WORKINGS = 4;

    /** Below it a double carries noise from the sums before it. */
    private static final MathContext SOUND = new MathContext(12, RoundingMode.HALF_UP);

    private static final MathContext FULL = new MathContext(15, RoundingMode.HALF_UP);
    private static final BigDecimal SMALLEST_PLAIN = new BigDecimal("0.000001");
    private static final BigDecimal LARGEST_PLAIN = new BigDecimal("1e9");
    private static final double SMALLEST_OHM = 0.001;
    private static final Unit MILLIOHM = Prefix.MILLI.of(FieldUnit.of(Dimension.RESISTANCE).unit());

    private FigureText() {}

    /** For a result: "0.526 V", "2.5 mm²", "4/0 AWG". */
    public static String of(final double si, final Dimension dimension) {
        return of(si, dimension, FIGURES);
    }

    /** With so many significant figures. */
    public static String of(final double si, final Dimension dimension, final int digits) {
        return text(si, dimension, digits, RoundingMode.HALF_UP);
    }

    /** For a file, which reads alike in every language: with a decimal point. */
    public static String inFiles(final double si, final Dimension dimension) {
        return joined(
                withPoint(
                        fieldValue(si, dimension),
                        dimension,
                        rounding(FIGURES, RoundingMode.HALF_UP)),
                unit(dimension));
    }

    /** For a floor: never less than the figure itself; four figures, as in a working. */
    public static String roundedUp(final double si, final Dimension dimension) {
        return text(si, dimension, IN_WORKINGS, RoundingMode.CEILING);
    }

    /** For a ceiling: never more than the figure itself; four figures, as in a working. */
    public static String roundedDown(final double si, final Dimension dimension) {
        return text(si, dimension, IN_WORKINGS, RoundingMode.FLOOR);
    }

    /** For a rough estimate of the worst: two figures, never less than the figure itself. */
    public static String roughlyUp(final double si, final Dimension dimension) {
        return text(si, dimension, ROUGHLY, RoundingMode.CEILING);
    }

    /** In field units, without the unit. */
    public static String number(final double si, final Dimension dimension, final int digits) {
        return number(fieldValue(si, dimension), dimension, rounding(digits, RoundingMode.HALF_UP));
    }

    /** The field unit as shown to people: "mm²", "Ω"; empty for plain numbers. */
    public static String unit(final Dimension dimension) {
        return FieldUnit.of(dimension).unit().shown();
    }

    /** The value in field units to 15 significant digits: 1.5e-6 m2 is exactly 1.5. */
    public static double edge(final double si, final Dimension dimension) {
        final double value = fieldValue(si, dimension);
        return Decimals.usual(value) ? Decimals.rounded(value) : edge(si, dimension, FULL);
    }

    private static double edge(final double si, final Dimension dimension, final MathContext full) {
        return BigDecimal.valueOf(fieldValue(si, dimension)).round(full).doubleValue();
    }

    /** In the field unit, even where another one would be handier. */
    public static String inFieldUnit(final double si, final Dimension dimension, final int digits) {
        return joined(number(si, dimension, digits), unit(dimension));
    }

    /** A resistance in milliohms, even where ohms would be handier. */
    public static String inMilliohms(final double si, final int digits) {
        return milliohms(si, rounding(digits, RoundingMode.HALF_UP));
    }

    private static String text(
            final double si, final Dimension dimension, final int digits, final RoundingMode mode) {
        final MathContext rounding = rounding(digits, mode);
        if (dimension == Dimension.RESISTANCE && si != 0 && Math.abs(si) < SMALLEST_OHM) {
            return milliohms(si, rounding);
        }
        return joined(number(fieldValue(si, dimension), dimension, rounding), unit(dimension));
    }

    private static String milliohms(final double si, final MathContext rounding) {
        return joined(number(si * 1000, Dimension.RESISTANCE, rounding), MILLIOHM.shown());
    }

    private static String joined(final String number, final String unit) {
        return unit.isEmpty() ? number : number + ' ' + unit;
    }

    private static String number(
            final double value, final Dimension dimension, final MathContext rounding) {
        return Language.inUse().number(withPoint(value, dimension, rounding));
    }

    private static String withPoint(
            final double value, final Dimension dimension, final MathContext rounding) {
        if (dimension == Dimension.GAUGE) {
            return Gauge.text((int) Math.round(value));
        }
        if (dimension != Dimension.COUNT && Decimals.usual(value)) {
            return Decimals.text(value, rounding.getPrecision(), rounding.getRoundingMode());
        }
        final BigDecimal sound = BigDecimal.valueOf(value).round(SOUND);
        final boolean exact = dimension == Dimension.COUNT;
        return plain(exact ? sound : sound.round(rounding));
    }

    private static String plain(final BigDecimal rounded) {
        if (rounded.signum() == 0) {
            return "0";
        }
        final BigDecimal trimmed = rounded.stripTrailingZeros();
        final BigDecimal size = trimmed.abs();
        if (size.compareTo(SMALLEST_PLAIN) >= 0 && size.compareTo(LARGEST_PLAIN) < 0) {
            return trimmed.toPlainString();
        }
        final int power = trimmed.precision() - trimmed.scale() - 1;
        return trimmed.scaleByPowerOfTen(-power).toPlainString() + " × 10^" + power;
    }

    private static MathContext rounding(final int digits, final RoundingMode mode) {
        return new MathContext(digits, mode);
    }

    private static double fieldValue(final double si, final Dimension dimension) {
        return si / dimension.scale();
    }
}
