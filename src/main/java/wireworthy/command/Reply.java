package wireworthy.command;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import wireworthy.marking.Mark;
import wireworthy.marking.Marker;
import wireworthy.marking.Outcome;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.working.Assumed;
import wireworthy.working.Cautions;
import wireworthy.working.Line;
import wireworthy.working.Question;
import wireworthy.working.Remedies;
import wireworthy.working.Sold;
import wireworthy.working.Solver;
import wireworthy.working.Telling;
import wireworthy.working.Unworkable;
import wireworthy.working.Worked;

/** The reply to a question, in the form of the question format. */
final class Reply {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final Worked worked;
    private final Worked around;
    private final SecondsOrHours units;

    private Reply(final Worked worked, final Worked around) {
        this.worked = worked;
        this.around = around;
        this.units = SecondsOrHours.of(worked.question());
    }

    /** Works a question and replies; what can't be worked becomes an error in the reply. */
    static ObjectNode to(final Question question, final Solver solver) {
        final Worked worked = solver.work(question);
        return new Reply(worked, solver.widely(question)).whole();
    }

    /** The reply to what can't be read or worked. */
    static ObjectNode error(final Unworkable why) {
        final ObjectNode reply = NODES.objectNode();
        reply.set("error", where(why));
        return reply;
    }

    private static ObjectNode where(final Unworkable why) {
        return NODES.objectNode().put("where", why.where()).put("message", why.what());
    }

    private ObjectNode whole() {
        final ObjectNode reply = NODES.objectNode();
        final ObjectNode found = reply.putObject("found");
        worked.question().find().forEach(asked -> found.set(asked.id(), found(asked)));
        final ArrayNode working = reply.putArray("working");
        Telling.lines(worked).forEach(line -> working.add(line(line)));
        final ArrayNode marks = reply.putArray("marks");
        Marker.marks(worked).forEach(mark -> marks.add(mark(mark)));
        cautions(reply);
        remedies(reply);
        final ArrayNode assumed = reply.putArray("assumed");
        Assumed.of(worked)
                .forEach(each -> assumed.addObject().put("id", each.id()).put("text", each.text()));
        offTheWay().ifPresent(why -> reply.set("error", where(why)));
        return reply;
    }

    private ObjectNode found(final Quantity asked) {
        final Optional<Unworkable> problem = worked.problem(asked);
        if (problem.isPresent()) {
            final ObjectNode node = NODES.objectNode();
            node.set("error", where(problem.orElseThrow()));
            return node;
        }
        final List<Ref> refs = worked.refs(asked);
        return refs.size() == 1 ? value(asked, refs.get(0)) : values(asked, refs);
    }

    private ObjectNode value(final Quantity asked, final Ref ref) {
        final ObjectNode node = NODES.objectNode();
        final OptionalDouble value = worked.value(ref);
        if (value.isEmpty()) {
            node.putNull("value");
        } else {
            node.put("value", units.edge(value.getAsDouble(), asked));
        }
        node.put("unit", units.unit(asked));
        return node.put("text", units.text(asked, text(asked, value.orElse(Double.NaN)), value));
    }

    private String text(final Quantity asked, final double value) {
        final boolean sold =
                asked == Quantity.STANDARD_SECTION || asked == Quantity.SECTION_FOR_AMPACITY;
        return sold ? Sold.text(worked.plan().setting(), value) : Telling.result(asked, value);
    }

    private ObjectNode values(final Quantity asked, final List<Ref> refs) {
        final ObjectNode node = NODES.objectNode();
        final ObjectNode each = node.putObject("values");
        refs.forEach(ref -> each.set(worked.question().subject(ref), value(asked, ref)));
        return node;
    }

    private ObjectNode line(final Line line) {
        final Quantity quantity = line.ref().quantity();
        final ObjectNode node = NODES.objectNode().put("quantity", quantity.id());
        if (!line.subject().isEmpty()) {
            node.put("subject", line.subject());
        }
        node.put("rule", line.rule()).put("formula", line.formula()).put("numbers", line.numbers());
        if (Double.isNaN(line.value())) {
            node.putNull("value");
        } else {
            node.put("value", FigureText.edge(line.value(), quantity.dimension()));
        }
        node.put("unit", quantity.dimension().unit());
        line.source().ifPresent(source -> node.put("source", source.text()));
        if (!line.note().isEmpty()) {
            node.put("note", line.note());
        }
        return node;
    }

    private static ObjectNode mark(final Mark mark) {
        final ObjectNode node = NODES.objectNode().put("quantity", mark.ref().quantity().id());
        node.put("given", mark.given()).put("reading", mark.understood());
        mark.sound()
                .ifPresentOrElse(sound -> node.put("sound", sound), () -> node.putNull("sound"));
        node.put("follows", mark.follows());
        final ArrayNode slips = node.putArray("slips");
        for (final Outcome outcome : mark.explained()) {
            final ArrayNode alternative = slips.addArray();
            outcome.ids().forEach(alternative::add);
        }
        mark.ask().ifPresent(ask -> node.put("ask", ask.quantity().id()));
        return node.put("explanation", mark.explanation());
    }

    private void cautions(final ObjectNode reply) {
        final ArrayNode cautions = reply.putArray("cautions");
        Cautions.of(worked.question(), around)
                .forEach(c -> cautions.addObject().put("id", c.id()).put("text", c.text()));
    }

    private void remedies(final ObjectNode reply) {
        final ArrayNode remedies = reply.putArray("remedies");
        Remedies.of(around)
                .forEach(
                        way -> {
                            final Dimension dimension = way.quantity().dimension();
                            remedies.addObject()
                                    .put("id", way.id())
                                    .put("quantity", way.quantity().id())
                                    .put("value", FigureText.edge(way.value(), dimension))
                                    .put("unit", dimension.unit())
                                    .put("text", way.text());
                        });
    }

    /** The first answer that no line of this working gives. */
    private Optional<Unworkable> offTheWay() {
        return worked.question().answers().keySet().stream()
                .filter(quantity -> Marker.onTheWay(worked, quantity).isEmpty())
                .findFirst()
                .map(
                        quantity ->
                                new Unworkable(
                                        "answers." + quantity.id(),
                                        "no line of this working gives the "
                                                + quantity.words()
                                                + "; ask for it too, or leave the answer out"));
    }
}
