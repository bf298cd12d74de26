package wireworthy.command;

import java.util.List;
import java.util.function.ToDoubleFunction;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.JsonNode;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.working.Assumed;
import wireworthy.working.CableNetwork;
import wireworthy.working.NetworkCautions;
import wireworthy.working.NetworkLoad;
import wireworthy.working.NetworkReader;
import wireworthy.working.NetworkSolution;
import wireworthy.working.NetworkSolver;
import wireworthy.working.Solver;
import wireworthy.working.Unworkable;
import wireworthy.working.Worked;

/** Writes the reply to a question about a network of cables. */
final class NetworkReply {
    private static final int EXACT = 4;
    private static final String RULE = "network";

    private final NetworkSolution solution;
    private final Worked beside;
    private final JsonGenerator json;
    private boolean whole = true;

    private NetworkReply(
            final NetworkSolution solution, final Worked beside, final JsonGenerator json) {
        this.solution = solution;
        this.beside = beside;
        this.json = json;
    }

    /**
     * Works a question and writes the reply.
     *
     * @return whether everything asked was worked
     * @throws Unworkable before anything is written, where the question can't be read or worked
     */
    static boolean write(final JsonNode question, final Solver solver, final JsonGenerator json) {
        final List<Quantity> asked = NetworkReader.find(question);
        final Worked beside = NetworkReader.beside(question, solver);
        final NetworkSolution solution = NetworkSolver.solve(NetworkReader.read(question, beside));
        return new NetworkReply(solution, beside, json).all(asked);
    }

    private boolean all(final List<Quantity> asked) {
        json.writeStartObject();
        json.writeObjectPropertyStart("found");
        asked.forEach(this::found);
        json.writeEndObject();
        json.writeArrayPropertyStart("working");
        solution.network().stretches().forEach(this::stretch);
        solution.network().loads().forEach(this::load);
        json.writeEndArray();
        json.writeArrayPropertyStart("marks");
        json.writeEndArray();
        Reply.list(
                json,
                "cautions",
                NetworkCautions.of(solution, beside),
                caution -> Reply.caution(caution, json));
        json.writeArrayPropertyStart("remedies");
        json.writeEndArray();
        Reply.list(json, "assumed", assumed(), each -> Reply.assumed(each, json));
        json.writeEndObject();
        return whole;
    }

    private void found(final Quantity asked) {
        json.writeObjectPropertyStart(asked.id());
        switch (asked) {
            case VOLTAGE_AT_LOAD -> each("voltages", asked, load -> solution.at(load.at()));
            case DROP -> each("values", asked, solution::drop);
            case DROP_PERCENT ->
                    each(
                            "values",
                            asked,
                            load -> solution.drop(load) / solution.network().supply());
            case LOAD_CURRENT ->
                    each("values", asked, load -> load.current(solution.at(load.at())));
            case CIRCUIT_CURRENT -> value(asked, solution.current());
            case TERMINAL_VOLTAGE -> value(asked, solution.terminal());
            case POWER_LOST -> value(asked, solution.heat());
            default -> refused(asked);
        }
        json.writeEndObject();
    }

    private void refused(final Quantity asked) {
        whole = false;
        Reply.where(
                new Unworkable(
                        "find",
                        "for a network ask for voltage-at-load, drop, drop-percent, load-current,"
                                + " circuit-current, terminal-voltage or power-lost, not for "
                                + asked.id()),
                json);
    }

    private void each(
            final String under, final Quantity asked, final ToDoubleFunction<NetworkLoad> value) {
        json.writeObjectPropertyStart(under);
        for (final NetworkLoad load : solution.network().loads()) {
            json.writeObjectPropertyStart(load.name());
            value(asked, value.applyAsDouble(load));
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    private void value(final Quantity quantity, final double value) {
        final Dimension dimension = quantity.dimension();
        json.writeNumberProperty("value", FigureText.edge(value, dimension));
        json.writeStringProperty("unit", dimension.unit());
        json.writeStringProperty("text", FigureText.of(value, dimension, 3));
    }

    private void stretch(final CableNetwork.Stretch stretch) {
        line(
                Quantity.LOOP_RESISTANCE,
                stretch.from() + " to " + stretch.to(),
                "resistance of the stretch, out and back",
                stretch.sum()
                        + " = "
                        + FigureText.of(stretch.resistance(), Dimension.RESISTANCE, EXACT),
                stretch.resistance());
    }

    private void load(final NetworkLoad load) {
        final double volts = solution.at(load.at());
        line(
                Quantity.VOLTAGE_AT_LOAD,
                load.name(),
                "the voltage at which the currents at each place add up to nothing",
                FigureText.of(volts, Dimension.VOLTAGE, EXACT)
                        + " at "
                        + load.at()
                        + ", where it takes "
                        + FigureText.of(load.current(volts), Dimension.CURRENT, EXACT),
                volts);
    }

    private void line(
            final Quantity quantity,
            final String subject,
            final String formula,
            final String numbers,
            final double value) {
        json.writeStartObject();
        json.writeStringProperty("quantity", quantity.id());
        json.writeStringProperty("subject", subject);
        json.writeStringProperty("rule", RULE);
        json.writeStringProperty("formula", formula);
        json.writeStringProperty("numbers", numbers);
        json.writeNumberProperty("value", FigureText.edge(value, quantity.dimension()));
        json.writeStringProperty("unit", quantity.dimension().unit());
        json.writeEndObject();
    }

    /** A resistivity is assumed only where a section was turned into a resistance by it. */
    private List<Assumed> assumed() {
        final boolean bySection =
                solution.network().stretches().stream().anyMatch(s -> s.sum().contains("÷"));
        return Assumed.of(beside).stream()
                .filter(each -> bySection || !each.id().equals(Quantity.RESISTIVITY.id()))
                .toList();
    }
}
