package wireworthy.paper.schedule;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import wireworthy.marking.Mark;
import wireworthy.paper.Block;
import wireworthy.vehicle.check.Way;
import wireworthy.working.Assumed;
import wireworthy.working.Caution;
import wireworthy.working.Danger;
import wireworthy.working.Line;

/** What circuits, main cable and supply have in common: cautions, workings, own figures. */
final class Workings {
    private final Block page;
    private final Common common;

    Workings(final Block page, final Common common) {
        this.common = common;
        this.page = page;
    }

    void cautions(final List<Caution> cautions) {
        for (final Caution caution : cautions) {
            page.say("div", caution.danger() == Danger.FIRE ? "warning" : "note", caution.text());
        }
    }

    void working(final List<Line> lines) {
        if (lines.isEmpty()) {
            return;
        }
        final Table table = new Table(page, "working.what", "working.sum", ">working.source");
        for (final Line line : lines) {
            table.row(name(line), sum(line), common.source(line));
        }
    }

    private static String name(final Line line) {
        final String words = line.ref().quantity().words();
        return line.subject().isEmpty() ? words : words + " (" + line.subject() + ")";
    }

    private static String sum(final Line line) {
        return line.note().isEmpty() ? line.numbers() : line.numbers() + " (" + line.note() + ")";
    }

    /** The ways out; within the limit it is only warm cable that breaks it. */
    void ways(final List<Way> ways, final OptionalDouble drop, final OptionalDouble limit) {
        if (!ways.isEmpty()) {
            final boolean warm = drop.orElse(0) <= limit.orElse(0);
            page.say("h3", Words.of(warm ? "circuit.ways.warm" : "circuit.ways"));
            final Block list = page.add("ul");
            ways.stream().map(Way::text).forEach(text -> list.say("li", text));
        }
    }

    /** The own figures of a part; those that are not sound are marked so, and not by colour. */
    void marks(final String whose, final List<Mark> marks) {
        if (!marks.isEmpty()) {
            final Block part = page.add("div", "kept");
            part.say("h3", Words.of("circuit.own", "name", whose));
            final Block list = part.add("ul");
            for (final Mark mark : marks) {
                final String sign = mark.isSound() ? "" : "! ";
                list.say("li", sign + mark.ref().quantity().words() + ": " + mark.explanation());
            }
        }
    }

    void assumed(final List<Assumed> assumed) {
        if (!assumed.isEmpty()) {
            final String all =
                    assumed.stream().map(Assumed::text).collect(Collectors.joining("; "));
            page.say("p", "small", Words.of("circuit.assumed", "list", all));
        }
    }
}
