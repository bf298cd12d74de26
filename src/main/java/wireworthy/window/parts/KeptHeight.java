package wireworthy.window.parts;

import java.util.function.DoubleUnaryOperator;

/**
 * A height worked once for a width and kept until the part is laid out anew. A pass of layout asks
 * every part for three heights at each level above it, and every time a text that wraps is broken
 * into lines again; JavaFX keeps heights only where no width is named. Two widths are kept: what
 * scrolls is measured without its bar and with it in every pass.
 */
final class KeptHeight {
    /** No width is named: JavaFX keeps that height itself. */
    private static final double ANY = -1;

    private double width = Double.NaN;
    private double height;
    private double widthBefore = Double.NaN;
    private double heightBefore;

    /** The height for a width, worked where it is not known. */
    double of(final double now, final DoubleUnaryOperator working) {
        if (now == ANY) {
            return working.applyAsDouble(now);
        }
        if (now == widthBefore) {
            return heightBefore;
        }
        // No number equals NaN, so that nothing is taken for known at first.
        if (now != width) {
            final double worked = working.applyAsDouble(now);
            widthBefore = width;
            heightBefore = height;
            width = now;
            height = worked;
        }
        return height;
    }

    void forget() {
        width = Double.NaN;
        widthBefore = Double.NaN;
    }
}
