package wireworthy.evening.called;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * An answer and how many called it out.
 *
 * @param text as it was understood
 */
public record Counted(String text, int count) {
    /** Equal answers together, in the order in which they were first called out. */
    public static List<Counted> of(final List<Called> called) {
        final Map<String, Integer> counts = new LinkedHashMap<>();
        called.forEach(each -> counts.merge(each.text(), 1, Integer::sum));
        final List<Counted> all = new ArrayList<>();
        counts.forEach((text, count) -> all.add(new Counted(text, count)));
        return List.copyOf(all);
    }
}
