package wireworthy.paper.schedule;

import static wireworthy.rules.Quantity.CIRCUIT_CURRENT;
import static wireworthy.rules.Quantity.DROP;
import static wireworthy.rules.Quantity.DROP_PERCENT;
import static wireworthy.rules.Quantity.FUSE;
import static wireworthy.rules.Quantity.ONE_WAY_LENGTH;
import static wireworthy.rules.Quantity.SECTION;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wireworthy.marking.Mark;
import wireworthy.paper.Block;
import wireworthy.paper.DistributionOnPaper;
import wireworthy.paper.DistributionOnPaper.Branch;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Part;
import wireworthy.vehicle.Understood;
import wireworthy.vehicle.check.CheckedCircuit;
import wireworthy.vehicle.check.CheckedVehicle;
import wireworthy.vehicle.check.FieldNote;
import wireworthy.working.Danger;

/** What is said first, the circuits at a glance, what holds for all, how they branch off. */
final class Overview {
    private static final String WRONG = " !";
    private static final String OPEN = " ?";

    private final CheckedVehicle checked;
    private final Common common;

    Overview(final CheckedVehicle checked, final Common common) {
        this.common = common;
        this.checked = checked;
    }

    void into(final Block page) {
        cautions(page);
        if (!checked.vehicle().notes().isBlank()) {
            page.say("h2", Words.of("notes")).say("p", checked.vehicle().notes());
        }
        page.say("h2", Words.of("table"));
        table(page);
        common.into(page);
        final Block drawing = page.add("div", "kept");
        drawing.say("h2", Words.of("distribution"));
        drawing.say("p", "small", Words.of("distribution.note"));
        distribution().into(drawing);
    }

    private void cautions(final Block page) {
        page.say("h2", Words.of("cautions"));
        final List<FieldNote> open =
                checked.main().notes().stream()
                        .filter(note -> note.kind() != FieldNote.Kind.DOUBT)
                        .toList();
        final List<CheckedCircuit> unjudged =
                checked.circuits().stream().filter(Overview::isUnjudged).toList();
        if (checked.cautions().isEmpty() && open.isEmpty() && unjudged.isEmpty()) {
            page.say("p", Words.of("cautions.none"));
        }
        checked.cautions().stream().filter(it -> !isLesser(it)).forEach(it -> caution(page, it));
        unjudged.forEach(each -> notKnown(page, each.circuit().name(), why(each)));
        figures(page);
        checked.cautions().stream().filter(Overview::isLesser).forEach(it -> caution(page, it));
        // While no main fuse is chosen, the thick cable is as unsafe as it can be.
        for (final FieldNote note : open) {
            notKnown(page, Words.of("main"), note.text());
        }
    }

    private static void notKnown(final Block page, final String where, final String what) {
        final Block box = page.add("div", "note");
        box.say("strong", Words.of("not-known") + " · " + where + ": ");
        box.text(what);
    }

    private static String why(final CheckedCircuit circuit) {
        return Stream.concat(
                        Stream.of(Words.of("unjudged.why")),
                        circuit.notes().stream().map(FieldNote::text))
                .collect(Collectors.joining(" "));
    }

    /** What only just holds, or costs money: said after the figures that are not sound. */
    private static boolean isLesser(final CheckedVehicle.Placed placed) {
        return placed.caution().danger().compareTo(Danger.ONLY_JUST) >= 0;
    }

    private static void caution(final Block page, final CheckedVehicle.Placed placed) {
        final Danger danger = placed.caution().danger();
        final Block box = page.add("div", danger == Danger.FIRE ? "warning" : "note");
        final String where = placed.name().isEmpty() ? Words.of("whole") : placed.name();
        box.say("strong", Words.of(key(danger)) + " · " + where + ": ");
        box.text(placed.caution().text());
    }

    /** Which own figures are not sound; why stands with their circuit. */
    private void figures(final Block page) {
        final String all =
                checked.circuits().stream()
                        .map(each -> figures(each.circuit().name(), each.marks()))
                        .filter(text -> !text.isEmpty())
                        .collect(Collectors.joining("; "));
        if (!all.isEmpty()) {
            final Block box = page.add("div", "note");
            box.say("strong", Words.of("cautions.figures") + ": ");
            box.text(all);
        }
    }

    private static String figures(final String whose, final List<Mark> marks) {
        final String wrong =
                marks.stream()
                        .filter(mark -> !mark.isSound())
                        .map(mark -> mark.ref().quantity().words())
                        .collect(Collectors.joining(", "));
        return wrong.isEmpty() ? "" : whose + " (" + wrong + ")";
    }

    private static String key(final Danger danger) {
        return danger.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private void table(final Block page) {
        final Table table =
                new Table(
                        page,
                        "table.circuit",
                        ">table.current",
                        ">table.fuse",
                        ">table.cable",
                        ">table.run",
                        ">table.drop",
                        ">table.percent");
        int number = 1;
        for (final CheckedCircuit circuit : checked.circuits()) {
            table.row(
                    number++ + " " + circuit.circuit().name(),
                    Words.value(CIRCUIT_CURRENT, circuit.value(CIRCUIT_CURRENT)),
                    fuse(circuit),
                    typed(circuit.circuit().part(), SECTION),
                    typed(circuit.circuit().part(), ONE_WAY_LENGTH),
                    Words.value(DROP, circuit.value(DROP)) + (isOver(circuit) ? WRONG : ""),
                    Words.value(DROP_PERCENT, circuit.value(DROP_PERCENT)));
        }
        foot(page, Overview::isUnfit, "unfit");
        foot(page, Overview::isUnjudged, "unjudged");
        foot(page, Overview::isOver, "over");
    }

    private void foot(final Block page, final Predicate<CheckedCircuit> is, final String key) {
        if (checked.circuits().stream().anyMatch(is)) {
            page.say("p", "small", Words.of(key));
        }
    }

    /** A fuse of which nothing says that it protects its cable. */
    private static boolean isUnjudged(final CheckedCircuit circuit) {
        return circuit.circuit().feed().ownFuse()
                && circuit.fuse().chosen().isPresent()
                && circuit.fuse().ceiling().isEmpty();
    }

    static boolean isOver(final CheckedCircuit circuit) {
        return circuit.cautions().stream().anyMatch(it -> it.id().equals("drop-over-limit"));
    }

    private static boolean isUnfit(final CheckedCircuit circuit) {
        return circuit.circuit().feed().ownFuse() && circuit.fuse().chosenUnfit();
    }

    private static String fuse(final CheckedCircuit circuit) {
        final String sign = isUnfit(circuit) ? WRONG : isUnjudged(circuit) ? OPEN : "";
        return circuit.circuit().feed().ownFuse()
                ? Words.value(FUSE, circuit.fuse().inUse()) + sign
                : Words.of("no-fuse");
    }

    private static String typed(final Part part, final Quantity quantity) {
        return Understood.of(quantity, part.given().text(quantity)).text();
    }

    private DistributionOnPaper distribution() {
        final Part supply = checked.vehicle().supply();
        final String main = Words.value(FUSE, checked.mainFuse().inUse());
        return new DistributionOnPaper(
                typed(supply, Quantity.SUPPLY_VOLTAGE),
                Words.of("distribution.main", "fuse", main),
                cable(checked.vehicle().main()),
                branches("", 0));
    }

    /** The circuits fed from one, each followed by its taps. */
    private List<Branch> branches(final String feeder, final int depth) {
        final List<Branch> branches = new ArrayList<>();
        for (final CheckedCircuit each : checked.circuits()) {
            final Circuit circuit = each.circuit();
            if (depth <= checked.circuits().size() && circuit.feed().circuit().equals(feeder)) {
                branches.add(branch(each, depth));
                branches.addAll(branches(circuit.name(), depth + 1));
            }
        }
        return branches;
    }

    private static Branch branch(final CheckedCircuit each, final int depth) {
        final Circuit circuit = each.circuit();
        final boolean fused = circuit.feed().ownFuse();
        return new Branch(
                depth,
                fused,
                each.fuseMissing(),
                circuit.name(),
                fused ? fuse(each) : missing(each),
                cable(circuit.part()));
    }

    private static String missing(final CheckedCircuit each) {
        return each.fuseMissing() ? Words.of("distribution.missing") : "";
    }

    private static String cable(final Part part) {
        return Stream.of(typed(part, SECTION), typed(part, ONE_WAY_LENGTH))
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", "));
    }
}
