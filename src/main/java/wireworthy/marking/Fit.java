package wireworthy.marking;

import java.math.BigDecimal;
import java.math.MathContext;
import wireworthy.rules.Dimension;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;

/**
 * Whether a typed figure is a value: within half a unit of its last digit plus 0.1 %, but no more
 * than a third of the value, which nobody rounds off.
 */
final class Fit {
    /** The relative part of the window. */
    static final double WINDOW = 0.001;

    private static final double MOST = 1 / 3.0;

    private Fit() {}

    static boolean holds(final Ref ref, final Reading.Read read, final double value) {
        final double unit = ref.quantity().dimension() == Dimension.GAUGE ? 0 : read.lastDigit();
        final double half = Math.min(unit / 2, MOST * Math.abs(value));
        return Math.abs(read.value() - value) <= half + WINDOW * Math.abs(value);
    }

    /** Whether it comes out as it was typed, with nothing rounded off. */
    static boolean asTyped(final Reading.Read read, final double value) {
        return Math.abs(read.value() - value) <= WINDOW * Math.abs(value);
    }

    /** The same for a line on the way, which may be kept in three figures: 1840 for 1843. */
    static boolean holdsOnTheWay(final Ref ref, final Reading.Read read, final double value) {
        final double unit = ref.quantity().dimension().scale();
        return holds(ref, read, value)
                || (!ref.quantity().chosen()
                        && kept(value / unit).compareTo(typed(read.value() / unit)) == 0);
    }

    private static BigDecimal kept(final double shown) {
        return new BigDecimal(shown).round(new MathContext(SlipFigures.FIGURES_KEPT));
    }

    /** Free of the last binary digits, which change with the unit. */
    private static BigDecimal typed(final double shown) {
        return new BigDecimal(shown).round(MathContext.DECIMAL32);
    }
}
