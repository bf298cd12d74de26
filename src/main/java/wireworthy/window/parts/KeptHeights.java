package wireworthy.window.parts;

import java.util.function.DoubleUnaryOperator;

/** The heights of a part, kept until it is laid out anew. */
final class KeptHeights {
    private final KeptHeight preferred = new KeptHeight();
    private final KeptHeight most = new KeptHeight();

    double preferred(final double width, final DoubleUnaryOperator working) {
        return preferred.of(width, working);
    }

    double most(final double width, final DoubleUnaryOperator working) {
        return most.of(width, working);
    }

    void forget() {
        preferred.forget();
        most.forget();
    }
}
