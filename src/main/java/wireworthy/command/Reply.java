package wireworthy.command;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import tools.jackson.core.JsonGenerator;
import wireworthy.facts.Source;
import wireworthy.marking.Mark;
import wireworthy.marking.Marker;
import wireworthy.marking.Outcome;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.working.Assumed;
import wireworthy.working.Caution;
import wireworthy.working.Cautions;
import wireworthy.working.Line;
import wireworthy.working.Question;
import wireworthy.working.Remedies;
import wireworthy.working.Remedy;
import wireworthy.working.Sold;
import wireworthy.working.Solver;
import wireworthy.working.Telling;
import wireworthy.working.Unworkable;
import wireworthy.working.Worked;

/** Writes the reply to a question, in the form of the question format. */
final class Reply {
    private final Worked worked;
    private final Worked around;
    private final SecondsOrHours units;
    private final JsonGenerator json;
    private boolean whole = true;

    private Reply(final Worked worked, final Worked around, final JsonGenerator json) {
        this.worked = worked;
        this.around = around;
        this.units = SecondsOrHours.of(worked.question());
        this.json = json;
    }

    /**
     * Works a question and writes the reply; an asked quantity that can't be worked becomes an
     * error in it.
     *
     * @return whether everything asked was worked
     * @throws Unworkable before anything is written, where nothing asked can be worked
     */
    static boolean write(final Question question, final Solver solver, final JsonGenerator json) {
        final Worked worked = solver.work(question);
        return new Reply(worked, solver.widely(question), json).all();
    }

    /**
     * Writes the reply to what can't be read or worked.
     *
     * @return that nothing was worked
     */
    static boolean error(final Unworkable why, final JsonGenerator json) {
        json.writeStartObject();
        where(why, json);
        json.writeEndObject();
        return false;
    }

    static void where(final Unworkable why, final JsonGenerator json) {
        json.writeObjectPropertyStart("error");
        json.writeStringProperty("where", why.where());
        json.writeStringProperty("message", why.what());
        json.writeEndObject();
    }

    private boolean all() {
        json.writeStartObject();
        json.writeObjectPropertyStart("found");
        worked.question().find().forEach(this::found);
        json.writeEndObject();
        list(json, "working", Telling.lines(worked), this::line);
        list(json, "marks", Marker.marks(worked), this::mark);
        list(json, "cautions", Cautions.of(worked.question(), around), c -> caution(c, json));
        list(json, "remedies", Remedies.of(around), this::remedy);
        list(json, "assumed", Assumed.of(worked), a -> assumed(a, json));
        offTheWay().ifPresent(this::error);
        json.writeEndObject();
        return whole;
    }

    static <T> void list(
            final JsonGenerator json,
            final String name,
            final List<T> things,
            final Consumer<T> object) {
        json.writeArrayPropertyStart(name);
        for (final T thing : things) {
            json.writeStartObject();
            object.accept(thing);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void error(final Unworkable why) {
        whole = false;
        where(why, json);
    }

    private void found(final Quantity asked) {
        json.writeObjectPropertyStart(asked.id());
        final Optional<Unworkable> problem = worked.problem(asked);
        final List<Ref> refs = worked.refs(asked);
        if (problem.isPresent()) {
            error(problem.orElseThrow());
        } else if (refs.size() == 1) {
            value(asked, refs.get(0));
        } else {
            values(asked, refs);
        }
        json.writeEndObject();
    }

    private void value(final Quantity asked, final Ref ref) {
        final OptionalDouble value = worked.value(ref);
        if (value.isEmpty()) {
            json.writeNullProperty("value");
        } else {
            json.writeNumberProperty("value", units.edge(value.getAsDouble(), asked));
        }
        json.writeStringProperty("unit", units.unit(asked));
        json.writeStringProperty(
                "text", units.text(asked, text(asked, value.orElse(Double.NaN)), value));
    }

    private String text(final Quantity asked, final double value) {
        return Sold.result(worked.plan().setting(), asked, value);
    }

    private void values(final Quantity asked, final List<Ref> refs) {
        json.writeObjectPropertyStart("values");
        for (final Ref ref : refs) {
            json.writeObjectPropertyStart(worked.question().subject(ref));
            value(asked, ref);
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    private void line(final Line line) {
        final Quantity quantity = line.ref().quantity();
        json.writeStringProperty("quantity", quantity.id());
        unlessEmpty("subject", line.subject());
        json.writeStringProperty("rule", line.rule());
        json.writeStringProperty("formula", line.formula());
        json.writeStringProperty("numbers", line.numbers());
        if (Double.isNaN(line.value())) {
            json.writeNullProperty("value");
        } else {
            json.writeNumberProperty("value", FigureText.edge(line.value(), quantity.dimension()));
        }
        json.writeStringProperty("unit", quantity.dimension().unit());
        unlessEmpty("source", line.source().map(Source::text).orElse(""));
        unlessEmpty("note", line.note());
    }

    private void unlessEmpty(final String name, final String text) {
        if (!text.isEmpty()) {
            json.writeStringProperty(name, text);
        }
    }

    private void mark(final Mark mark) {
        json.writeStringProperty("quantity", mark.ref().quantity().id());
        json.writeStringProperty("given", mark.given());
        json.writeStringProperty("reading", mark.understood());
        mark.sound()
                .ifPresentOrElse(
                        sound -> json.writeBooleanProperty("sound", sound),
                        () -> json.writeNullProperty("sound"));
        json.writeBooleanProperty("follows", mark.follows());
        json.writeArrayPropertyStart("slips");
        for (final Outcome outcome : mark.explained()) {
            json.writeStartArray();
            outcome.ids().forEach(json::writeString);
            json.writeEndArray();
        }
        json.writeEndArray();
        mark.ask().ifPresent(ask -> json.writeStringProperty("ask", ask.quantity().id()));
        json.writeStringProperty("explanation", mark.explanation());
    }

    static void caution(final Caution caution, final JsonGenerator json) {
        json.writeStringProperty("id", caution.id());
        json.writeStringProperty("text", caution.alone());
    }

    private void remedy(final Remedy way) {
        final Dimension dimension = way.quantity().dimension();
        json.writeStringProperty("id", way.id());
        json.writeStringProperty("quantity", way.quantity().id());
        json.writeNumberProperty("value", FigureText.edge(way.value(), dimension));
        json.writeStringProperty("unit", dimension.unit());
        json.writeStringProperty("text", way.text());
    }

    static void assumed(final Assumed assumed, final JsonGenerator json) {
        json.writeStringProperty("id", assumed.id());
        json.writeStringProperty("text", assumed.text());
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
