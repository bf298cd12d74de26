package wireworthy.marking;

import wireworthy.rules.Dimension;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;

/** Whether a typed figure is a value: within half a unit of its last digit plus 0.1 %. */
final class Fit {
    /** The relative part of the window. */
    static final double WINDOW = 0.001;

    private Fit() {}

    static boolean holds(final Ref ref, final Reading.Read read, final double value) {
        final double unit = ref.quantity().dimension() == Dimension.GAUGE ? 0 : read.lastDigit();
        return Math.abs(read.value() - value) <= unit / 2 + WINDOW * Math.abs(value);
    }
}
