package wireworthy.paper.schedule;

import java.util.OptionalDouble;
import wireworthy.paper.Block;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Feed;
import wireworthy.vehicle.check.CheckedCircuit;
import wireworthy.vehicle.check.CheckedLoad;
import wireworthy.vehicle.check.FieldNote;

/** One circuit with all its sums. */
final class CircuitPart {
    private final int number;
    private final CheckedCircuit checked;

    CircuitPart(final int number, final CheckedCircuit checked) {
        this.number = number;
        this.checked = checked;
    }

    void into(final Block page) {
        final String title = Words.of("circuit", "number", String.valueOf(number));
        page.say("h2", title.replace("{name}", checked.circuit().name()));
        feed(page, checked.circuit().feed());
        final Workings workings = new Workings(page);
        workings.cautions(checked.cautions());
        for (final FieldNote note : checked.notes()) {
            page.say("p", "small", Words.of("circuit.missing", "why", note.text()));
        }
        page.say("p", Words.of("circuit.window") + ": " + checked.fuse().text());
        workings.working(checked.working());
        workings.ways(checked.ways());
        loads(page);
        workings.marks(checked.marks());
        workings.assumed(checked.assumed());
    }

    private static void feed(final Block page, final Feed feed) {
        if (feed.isTap()) {
            final String how = Words.of(feed.ownFuse() ? "fed.fuse" : "fed.none");
            page.say("p", Words.of("fed", "name", feed.circuit()).replace("{how}", how));
        }
    }

    private void loads(final Block page) {
        if (checked.loads().isEmpty()) {
            return;
        }
        page.say("h3", Words.of("circuit.loads"));
        final Table table =
                new Table(
                        page,
                        "circuit.loads.load",
                        ">circuit.loads.predicted",
                        ">circuit.loads.measured",
                        "circuit.loads.says");
        for (final CheckedLoad load : checked.loads()) {
            table.row(
                    load.name(),
                    Words.value(Quantity.VOLTAGE_AT_LOAD, load.predicted()),
                    load.measured().map(CircuitPart::volts).orElse("____ V"),
                    load.measured().map(CheckedLoad.Comparison::text).orElse(""));
        }
    }

    private static String volts(final CheckedLoad.Comparison measured) {
        return Words.value(Quantity.VOLTAGE_AT_LOAD, OptionalDouble.of(measured.volts()));
    }
}
