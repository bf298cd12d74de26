package wireworthy.paper.schedule;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import wireworthy.paper.Block;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.vehicle.check.FuseFault;

/** A short circuit behind each fuse: fuses of which the same holds stand in one row. */
final class FaultPart {
    private final List<FuseFault> faults;

    FaultPart(final List<FuseFault> faults) {
        this.faults = faults;
    }

    /** What stands behind the names. */
    private record Figures(String current, String breaks, String time) {}

    void into(final Block page) {
        page.say("h2", Words.of("faults")).say("p", "small", Words.of("faults.note"));
        final Table table =
                new Table(
                        page, "faults.behind", ">faults.current", ">faults.breaks", ">faults.time");
        final Map<Figures, String> rows = new LinkedHashMap<>();
        faults.forEach(each -> rows.merge(figures(each), name(each), (a, b) -> a + ", " + b));
        rows.forEach(
                (figures, names) ->
                        table.row(names, figures.current(), figures.breaks(), figures.time()));
        faults.stream()
                .filter(each -> each.current().isEmpty())
                .findFirst()
                .ifPresent(each -> page.say("p", "small", each.text()));
    }

    private static String name(final FuseFault fault) {
        return fault.circuit().isEmpty() ? Words.of("faults.main") : fault.circuit();
    }

    private static Figures figures(final FuseFault fault) {
        return new Figures(
                fault.current().isEmpty()
                        ? Words.of("unknown")
                        : FigureText.roughlyUp(fault.current().getAsDouble(), Dimension.CURRENT),
                text(fault.breakingCapacity(), Dimension.CURRENT, "faults.maker"),
                text(fault.heatingOrder(), Dimension.SHORT_TIME, "unknown"));
    }

    private static String text(
            final OptionalDouble value, final Dimension dimension, final String otherwise) {
        return value.isEmpty()
                ? Words.of(otherwise)
                : FigureText.of(value.getAsDouble(), dimension);
    }
}
