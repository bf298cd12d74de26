package wireworthy.paper.schedule;

import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wireworthy.paper.Block;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Feed;
import wireworthy.vehicle.Stretch;
import wireworthy.vehicle.Understood;
import wireworthy.vehicle.check.CheckedCircuit;
import wireworthy.vehicle.check.CheckedLoad;
import wireworthy.vehicle.check.FieldNote;
import wireworthy.working.CableNetwork;
import wireworthy.working.NetworkSolution;

/** One circuit with all its sums. */
final class CircuitPart {
    private final int number;
    private final CheckedCircuit checked;
    private final Common common;

    CircuitPart(final int number, final CheckedCircuit checked, final Common common) {
        this.common = common;
        this.number = number;
        this.checked = checked;
    }

    void into(final Block page) {
        final String title = Words.of("circuit", "number", String.valueOf(number));
        page.say("h2", title.replace("{name}", checked.circuit().name()));
        feed(page, checked.circuit().feed());
        final Workings workings = new Workings(page, common);
        workings.cautions(checked.cautions());
        if (!checked.circuit().notes().isBlank()) {
            page.say("p", Words.of("notes") + ": " + checked.circuit().notes());
        }
        for (final FieldNote note : checked.notes()) {
            page.say("p", "small", Words.of("circuit.missing", "why", note.text()));
        }
        page.say("p", Words.of("circuit.window") + ": " + checked.fuse().text());
        workings.working(checked.working());
        workings.ways(checked.ways(), checked.dropFromBoard(), checked.dropLimit());
        checked.network().ifPresent(solution -> stretches(page, solution));
        loads(page);
        workings.marks(checked.circuit().name(), checked.marks());
        workings.assumed(common.own(checked.assumed()));
    }

    private static void feed(final Block page, final Feed feed) {
        if (feed.isTap()) {
            final String how = Words.of(feed.ownFuse() ? "fed.fuse" : "fed.none");
            page.say("p", Words.of("fed", "name", feed.circuit()).replace("{how}", how));
        }
    }

    /** The cable stretch by stretch, in the order typed. */
    private void stretches(final Block page, final NetworkSolution solution) {
        page.say("h3", Words.of("stretches"));
        final Table table =
                new Table(
                        page,
                        "stretches.from",
                        "stretches.to",
                        "stretches.cable",
                        ">stretches.current",
                        ">stretches.volts");
        for (int i = 0; i < checked.circuit().stretches().size(); i++) {
            final Stretch stretch = checked.circuit().stretches().get(i);
            final double amps = solution.through(solution.network().stretches().get(i));
            table.row(
                    place(stretch.from()),
                    place(stretch.to()),
                    cable(stretch),
                    Words.value(Quantity.CIRCUIT_CURRENT, OptionalDouble.of(Math.abs(amps))),
                    Words.value(
                            Quantity.VOLTAGE_AT_LOAD,
                            OptionalDouble.of(solution.at(stretch.to()))));
        }
    }

    private static String place(final String name) {
        return name.equals(CableNetwork.SOURCE) ? Words.of("stretches.source") : name;
    }

    private static String cable(final Stretch stretch) {
        return Stream.of(Quantity.SECTION, Quantity.ONE_WAY_LENGTH)
                .map(each -> Understood.of(each, stretch.given().text(each)).text())
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", "));
    }

    private void loads(final Block page) {
        if (checked.loads().isEmpty()) {
            return;
        }
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
