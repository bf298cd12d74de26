package wireworthy.window;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.List;

/**
 * The pairs of slips that fitted the last few unsound figures of this sitting. A pair is said only
 * when another problem shows it again.
 */
final class Suspicions {
    private static final int MOST = 3;

    private final Deque<List<List<String>>> last = new ArrayDeque<>();

    void add(final List<List<String>> pairs) {
        if (!pairs.isEmpty()) {
            last.addFirst(pairs);
        }
        if (last.size() > MOST) {
            last.removeLast();
        }
    }

    /** The pairs suspected in the problems before. */
    Collection<List<String>> earlier() {
        return last.stream().flatMap(List::stream).toList();
    }
}
