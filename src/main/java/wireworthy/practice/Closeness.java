package wireworthy.practice;

import java.util.List;

/**
 * What comes too near to what in the numbers of a problem, in words for the author of its bank.
 *
 * @param near less than 1.5 % apart, or like a given
 * @param confused of those, what even figures typed in three digits can't tell apart
 */
public record Closeness(List<String> near, List<String> confused) {
    public Closeness {
        near = List.copyOf(near);
        confused = List.copyOf(confused);
    }

    /** Of several figures of one circuit. */
    static Closeness together(final List<Closeness> each) {
        return new Closeness(
                each.stream().flatMap(it -> it.near().stream()).toList(),
                each.stream().flatMap(it -> it.confused().stream()).toList());
    }

    /** Whether everything stands as far apart as it should. */
    public boolean none() {
        return near.isEmpty();
    }

    boolean betterThan(final Closeness other) {
        return confused.size() == other.confused.size()
                ? near.size() < other.near.size()
                : confused.size() < other.confused.size();
    }
}
