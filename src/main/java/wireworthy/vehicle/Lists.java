package wireworthy.vehicle;

import java.util.ArrayList;
import java.util.List;

/** Lists that never change, with one thing other than before. */
final class Lists {
    private Lists() {}

    static <T> List<T> replaced(final List<T> list, final int index, final T thing) {
        final List<T> changed = new ArrayList<>(list);
        changed.set(index, thing);
        return changed;
    }
}
