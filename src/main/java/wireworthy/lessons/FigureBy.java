package wireworthy.lessons;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.DoubleStream;
import wireworthy.facts.Awg;
import wireworthy.facts.CableTables;
import wireworthy.record.SumsInUse;
import wireworthy.record.WireSizes;
import wireworthy.rules.Quantity;

/** Fills in what a figure leaves open, and shows its sections the way cable is sold. */
final class FigureBy {
    private static final double MM2 = 1e-6;
    private static final String BY_GAUGE = "boat-cable";

    /** The figures that work as well from a gauge as from a section. */
    private static final Set<FigureKind> GAUGED =
            Set.of(FigureKind.FUSE_BETWEEN, FigureKind.VOLTS_ALONG_THE_RUN);

    private final Figure figure;
    private final SumsInUse sums;
    private final Map<FigureOption, Handle> handles;

    FigureBy(final Figure figure, final SumsInUse sums) {
        this.figure = figure;
        this.sums = sums;
        handles = new LinkedHashMap<>(figure.handles());
    }

    Figure figure() {
        if (figure.handles().get(FigureOption.SECTION) instanceof Handle.Choice sections) {
            section(sections);
        }
        fill(FigureOption.DROP_LIMIT, Quantity.DROP_LIMIT_SHARE, sums.dropLimit());
        fill(FigureOption.MARGIN, Quantity.MARGIN, sums.margin());
        return new Figure(
                figure.kind(),
                Collections.unmodifiableMap(handles),
                figure.tryThis(),
                figure.open());
    }

    private void fill(final FigureOption option, final Quantity quantity, final double value) {
        if (figure.open().contains(option)) {
            handles.put(option, new Handle.Fixed(quantity, value));
        }
    }

    private void section(final Handle.Choice sections) {
        if (figure.kind() == FigureKind.FUSE_BETWEEN
                && figure.open().contains(FigureOption.CABLE_TABLE)
                && holds(sections)) {
            handles.put(
                    FigureOption.CABLE_TABLE,
                    new Handle.Named(Quantity.CABLE_TABLE, sums.cableTable()));
        }
        if (sums.sizes() == WireSizes.AWG
                && GAUGED.contains(figure.kind())
                && !namesATableBySection()) {
            gauges(sections).ifPresent(it -> handles.put(FigureOption.SECTION, it));
        }
    }

    /** A table in which a section is missing can't be used for the figure. */
    private boolean holds(final Handle.Choice sections) {
        return mm2(sections).allMatch(sums.table()::holds);
    }

    private boolean namesATableBySection() {
        return handles.get(FigureOption.CABLE_TABLE) instanceof Handle.Named table
                && !table.name().equals(BY_GAUGE);
    }

    private static DoubleStream mm2(final Handle.Choice sections) {
        return sections.values().stream().mapToDouble(each -> each / MM2);
    }

    /** For each section the next gauge sold that is no thinner; none where one is too thick. */
    private static Optional<Handle> gauges(final Handle.Choice sections) {
        final List<Double> gauges =
                mm2(sections).mapToObj(FigureBy::gauge).flatMap(Optional::stream).toList();
        final int start = sections.values().indexOf(sections.start());
        return gauges.size() == sections.values().size()
                ? Optional.of(
                        new Handle.Choice(
                                Quantity.GAUGE,
                                gauges.stream().distinct().toList(),
                                gauges.get(start)))
                : Optional.empty();
    }

    private static Optional<Double> gauge(final double mm2) {
        return CableTables.named(BY_GAUGE).rows().stream()
                .filter(row -> row.sectionMm2() >= mm2)
                .findFirst()
                .map(row -> (double) Awg.number(row.label()).orElseThrow());
    }
}
