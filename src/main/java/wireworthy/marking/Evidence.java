package wireworthy.marking;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import wireworthy.rules.Ref;

/**
 * What earlier answers of the same learner say about this one.
 *
 * @param recent the slips of the last seven days by id, with how often each was made
 * @param suspected the pairs of slips that fitted lately, by id, in any order
 * @param asking whether a line can be asked for that would settle which slips it was
 * @param sound lines whose answers are sound, by another figure for copper or rounded as on a page
 */
public record Evidence(
        Map<String, Integer> recent, Set<List<String>> suspected, boolean asking, Set<Ref> sound) {
    /** Nothing is known of the learner. */
    public static final Evidence NONE = new Evidence(Map.of(), Set.of(), true, Set.of());

    /** A page of sums worked before: all that can be known of it stands there. */
    public static final Evidence PAGE = new Evidence(Map.of(), Set.of(), false, Set.of());

    public Evidence {
        recent = Map.copyOf(recent);
        suspected = suspected.stream().map(Evidence::sorted).collect(Collectors.toSet());
        suspected = Set.copyOf(suspected);
        sound = Set.copyOf(sound);
    }

    /** A page of which some lines are known to be sound. */
    public static Evidence page(final Set<Ref> sound) {
        return new Evidence(Map.of(), Set.of(), false, sound);
    }

    /**
     * From what was kept.
     *
     * @param made the ids of each explanation given in the last seven days
     * @param suspected the pairs suspected in the problems before this one
     */
    public static Evidence of(
            final Collection<List<String>> made, final Collection<List<String>> suspected) {
        final Map<String, Integer> recent =
                made.stream()
                        .flatMap(List::stream)
                        .collect(Collectors.toMap(id -> id, id -> 1, Integer::sum));
        return new Evidence(recent, Set.copyOf(suspected), true, Set.of());
    }

    private static List<String> sorted(final List<String> pair) {
        return pair.stream().sorted().toList();
    }

    /** How often these slips were made lately, together. */
    int made(final Outcome outcome) {
        return outcome.ids().stream().mapToInt(id -> recent.getOrDefault(id, 0)).sum();
    }

    /** Whether this pair fitted lately, too. */
    boolean suspects(final Outcome pair) {
        return suspected.contains(sorted(pair.ids()));
    }
}
