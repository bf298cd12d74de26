package wireworthy.rules;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Keeps what givens were read as: a file of questions says "12 V" over and over. Safe from several
 * threads.
 */
public final class FiguresRead {
    private static final int MOST = 2_000;

    private final Map<Dimension, Map<String, Reading>> kept = new ConcurrentHashMap<>();

    /** Reads a figure that must have its unit, as {@link Figures#read} does. */
    public Reading read(final String typed, final Dimension dimension) {
        if (typed.length() > Typed.LONGEST) {
            return Figures.read(typed, dimension, true);
        }
        final Map<String, Reading> known =
                kept.computeIfAbsent(dimension, any -> new ConcurrentHashMap<>());
        if (known.size() > MOST) {
            known.clear();
        }
        return known.computeIfAbsent(typed, text -> Figures.read(text, dimension, true));
    }
}
