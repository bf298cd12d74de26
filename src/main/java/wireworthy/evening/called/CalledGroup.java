package wireworthy.evening.called;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Answers that come from the same.
 *
 * @param origin as it is told of the first of them
 * @param answers in the order in which they were called out
 */
public record CalledGroup(Origin origin, List<Called> answers) {
    private static final Comparator<CalledGroup> ORDER =
            Comparator.comparing((CalledGroup group) -> group.origin().kind())
                    .thenComparingInt(group -> -group.count());

    public CalledGroup {
        answers = List.copyOf(answers);
    }

    /** Sound ones, then slip by slip the commonest first, then what no slip explains. */
    public static List<CalledGroup> of(final List<Called> called) {
        final List<List<Called>> groups = new ArrayList<>();
        for (final Called each : called) {
            groups.stream()
                    .filter(group -> group.get(0).origin().same(each.origin()))
                    .findFirst()
                    .orElseGet(() -> begun(groups))
                    .add(each);
        }
        return groups.stream()
                .map(group -> new CalledGroup(group.get(0).origin(), group))
                .sorted(ORDER)
                .toList();
    }

    private static List<Called> begun(final List<List<Called>> groups) {
        final List<Called> group = new ArrayList<>();
        groups.add(group);
        return group;
    }

    /** How many called one of them. */
    public int count() {
        return answers.size();
    }

    /** Equal answers together. */
    public List<Counted> counted() {
        return Counted.of(answers);
    }
}
