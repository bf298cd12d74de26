package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.*;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import wireworthy.rules.Quantity;
import wireworthy.texts.TextBundle;
import wireworthy.vehicle.Circuit;
import wireworthy.working.NetworkLoad;
import wireworthy.working.NetworkSolution;
import wireworthy.working.Telling;

/**
 * What reaches the load of a cable that is worst off.
 *
 * @param load its name
 * @param values by quantity, SI
 */
record WorstOff(String load, Map<Quantity, Double> values) {
    private static final TextBundle TEXTS = new TextBundle("network");
    private static final List<Quantity> TOLD = List.of(DROP, DROP_PERCENT, VOLTAGE_AT_LOAD);

    static WorstOff of(final NetworkSolution solution) {
        NetworkLoad worst = solution.network().loads().get(0);
        for (final NetworkLoad each : solution.network().loads()) {
            worst = solution.drop(each) > solution.drop(worst) ? each : worst;
        }
        final double drop = solution.drop(worst);
        final double percent = 100 * drop / solution.network().supply();
        return new WorstOff(
                worst.name(),
                Map.of(
                        DROP,
                        drop,
                        DROP_PERCENT,
                        percent,
                        VOLTAGE_AT_LOAD,
                        solution.at(worst.at())));
    }

    /** The sums with these; own figures of them are compared by eye, for each load has its own. */
    Sums into(final Sums sums, final Circuit circuit) {
        return sums.with(
                TOLD.stream().map(this::found).toList(),
                TOLD.stream().filter(circuit.part().answers()::has).map(this::note).toList());
    }

    private double value(final Quantity quantity) {
        return values.getOrDefault(quantity, Double.NaN);
    }

    private String text(final Quantity quantity) {
        return Telling.result(quantity, value(quantity));
    }

    private Found found(final Quantity quantity) {
        return new Found(quantity, OptionalDouble.of(value(quantity)), text(quantity), "");
    }

    private FieldNote note(final Quantity quantity) {
        return FieldNote.missing(
                "answers." + quantity.id(),
                TEXTS.of("own.several", "load", load, "value", text(quantity)));
    }
}
