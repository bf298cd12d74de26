package wireworthy.rules;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * A number as typed, before its unit.
 *
 * @param value exact, but for fractions without end such as 1/3
 * @param step the value of one in the last typed digit
 * @param digits significant digits typed
 */
record Numeral(BigDecimal value, BigDecimal step, int digits) {

    private static final MathContext FRACTION = MathContext.DECIMAL64;
    private static final MathContext THREE_FIGURES = new MathContext(3);
    private static final MathContext SIX_FIGURES = new MathContext(6);
    private static final int LONGEST_PLAIN = 15;

    static Numeral decimal(final BigDecimal value) {
        return new Numeral(value, value.ulp(), value.precision());
    }

    /** A fraction is taken to be as fine as its decimal in three figures. */
    static Numeral fraction(final int whole, final int above, final int below) {
        final BigDecimal value =
                BigDecimal.valueOf((long) whole * below + above)
                        .divide(BigDecimal.valueOf(below), FRACTION);
        final BigDecimal figures = value.round(THREE_FIGURES);
        return new Numeral(value, figures.ulp(), figures.precision());
    }

    Numeral negated() {
        return new Numeral(value.negate(), step, digits);
    }

    boolean isWhole() {
        return value.signum() == 0 || value.stripTrailingZeros().scale() <= 0;
    }

    /** With a decimal point and the typed zeros; powers of ten only where it would be long. */
    String text() {
        final BigDecimal shown = value.precision() > digits ? value.round(SIX_FIGURES) : value;
        final int places = Math.max(shown.scale(), shown.precision() - shown.scale());
        return places <= LONGEST_PLAIN ? shown.toPlainString() : shown.toString();
    }
}
