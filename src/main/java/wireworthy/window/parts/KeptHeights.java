package wireworthy.window.parts;

import java.util.function.DoubleUnaryOperator;

/** The three heights of a part, kept until it is laid out anew. */
final class KeptHeights {
    private final KeptHeight least = new KeptHeight();
    private final KeptHeight preferred = new KeptHeight();
    private final KeptHeight most = new KeptHeight();

    double least(final double width, final DoubleUnaryOperator working) {
        return least.of(width, working);
    }

    double preferred(final double width, final DoubleUnaryOperator working) {
        return preferred.of(width, working);
    }

    double most(final double width, final DoubleUnaryOperator working) {
        return most.of(width, working);
    }

    void forget() {
        least.forget();
        preferred.forget();
        most.forget();
    }
}
