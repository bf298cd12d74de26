package wireworthy.practice;

import java.util.Optional;
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
 * @param taken at the load
 */
public record CircuitLabels(String supply, String cable, String length, String taken) {
    private static final Quantity[] TAKEN = {
        Quantity.LOAD_POWER, Quantity.LOAD_CURRENT, Quantity.CIRCUIT_CURRENT, Quantity.RESISTANCE
    };

    public static CircuitLabels of(final Exercise exercise) {
        return new CircuitLabels(
                given(exercise, Quantity.SUPPLY_VOLTAGE),
                given(exercise, Quantity.SECTION),
                given(exercise, Quantity.ONE_WAY_LENGTH),
                Stream.of(TAKEN)
                        .map(quantity -> given(exercise, quantity))
                        .filter(text -> !text.isEmpty())
                        .findFirst()
                        .orElse(""));
    }

    private static String given(final Exercise exercise, final Quantity quantity) {
        final Optional<Worked> worked = exercise.circuit();
        return worked.flatMap(circuit -> circuit.typed(Ref.circuit(quantity)))
                .map(read -> read.inItsOwnUnit())
                .orElse("");
    }
}
