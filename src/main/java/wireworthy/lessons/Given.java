package wireworthy.lessons;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import wireworthy.rules.FiguresRead;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.working.Question;
import wireworthy.working.QuestionReader;
import wireworthy.working.Unworkable;

/** Reads one value of a live figure the way a question reads its givens, limits and all. */
final class Given {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private static final FiguresRead FIGURES = new FiguresRead();

    private Given() {}

    /** A number, SI, and what it is a number of: a drop limit may be volts or a share. */
    record Amount(Quantity quantity, double value) {}

    static Amount number(final Quantity quantity, final Yaml.Text text) {
        return question(quantity, NODES.stringNode(text.text()), text.line())
                .figures()
                .entrySet()
                .stream()
                .findFirst()
                .map(entry -> new Amount(entry.getKey().quantity(), entry.getValue().value()))
                .orElseThrow();
    }

    /** Whether the text says nothing at all with its unit, such as 0 h. */
    static boolean none(final Quantity quantity, final Yaml.Text text) {
        return FIGURES.read(text.text(), quantity.dimension()) instanceof Reading.Read read
                && read.value() == 0;
    }

    static String name(final Quantity quantity, final Yaml.Text text) {
        return question(quantity, NODES.stringNode(text.text()), text.line())
                .names()
                .values()
                .iterator()
                .next();
    }

    private static Question question(
            final Quantity quantity, final JsonNode value, final int line) {
        final ObjectNode json = NODES.objectNode();
        json.putObject("given").set(quantity.id(), value);
        json.put("find", Quantity.DROP.id());
        try {
            return QuestionReader.read(json);
        } catch (final Unworkable e) {
            throw new Refused(line, e.what(), "Write a figure with its unit.");
        }
    }
}
