package wireworthy.window.parts;

import java.util.function.DoubleUnaryOperator;

/** The three heights of a part, kept until it is laid out anew. */
public final class KeptHeights {
    private final KeptHeight least = new KeptHeight();
    private final KeptHeight preferred = new KeptHeight();
    private final KeptHeight most = new KeptHeight();

    public double least(final double width, final DoubleUnaryOperator working) {
        return least.of(width, working);
    }

    public double preferred(final double width, final DoubleUnaryOperator working) {
        return preferred.of(width, working);
    }

    public double most(final double width, final DoubleUnaryOperator working) {
        return most.of(width, working);
    }

    public void forget() {
        least.forget();
        preferred.forget();
        most.forget();
    }
}
