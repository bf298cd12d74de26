package wireworthy.practice;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.working.Worked;

/**
 * What stands beside the drawn circuit of an exercise: the givens as they were typed, empty where
 * one is not given.
 *
 * @param supply at the battery
 * @param cable along the conductor
 * @param length between the two ends
 * @param taken at the load; "6 × 12 W" where there are so many alike
 * @param beside at each of the loads side by side how many of it there are, such as "×6"; empty at
 *     a single one, and no entries where the loads are not told apart
 */
public record CircuitLabels(
        String supply, String cable, String length, String taken, List<String> beside) {
    private static final String TIMES = "×";
    private static final String SINGLE = "1";
    private static final Quantity[] TAKEN = {
        Quantity.LOAD_POWER, Quantity.LOAD_CURRENT, Quantity.CIRCUIT_CURRENT, Quantity.RESISTANCE
    };

    public static CircuitLabels of(final Exercise exercise) {
        return new CircuitLabels(
                given(exercise, Quantity.SUPPLY_VOLTAGE),
                given(exercise, Quantity.SECTION),
                given(exercise, Quantity.ONE_WAY_LENGTH),
                taken(exercise),
                exercise.circuit().map(CircuitLabels::beside).orElse(List.of()));
    }

    private static String taken(final Exercise exercise) {
        final String one =
                Stream.of(TAKEN)
                        .map(quantity -> given(exercise, quantity))
                        .filter(text -> !text.isEmpty())
                        .findFirst()
                        .orElse("");
        final String count = given(exercise, Quantity.LOAD_COUNT);
        return one.isEmpty() || count.isEmpty() ? one : count + " " + TIMES + " " + one;
    }

    private static List<String> beside(final Worked worked) {
        return IntStream.rangeClosed(1, worked.question().loads().size())
                .mapToObj(load -> given(worked, new Ref(Quantity.LOAD_COUNT, load)))
                .map(count -> count.isEmpty() || count.equals(SINGLE) ? "" : TIMES + count)
                .toList();
    }

    private static String given(final Exercise exercise, final Quantity quantity) {
        return exercise.circuit().map(it -> given(it, Ref.circuit(quantity))).orElse("");
    }

    private static String given(final Worked worked, final Ref ref) {
        return worked.typed(ref).map(read -> read.inItsOwnUnit()).orElse("");
    }
}
