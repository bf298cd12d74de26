package wireworthy.window.figures;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.ObjectBinding;
import wireworthy.facts.FuseSeries;
import wireworthy.facts.FuseSeriesTable;
import wireworthy.facts.StandardSizes;
import wireworthy.lessons.Figure;
import wireworthy.lessons.FigureOption;
import wireworthy.lessons.Handle;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.working.Solver;
import wireworthy.working.Telling;
import wireworthy.working.Worked;

/** The standard ratings between the floor of a circuit and the ceiling of its cable. */
final class FuseBetween implements FigureModel<FuseBetween.Shown> {
    /** Out and back. */
    private static final int CORES = 2;

    private final Solver solver;
    private final Knob current;
    private final Knob section;
    private final Knob cables;
    private final Knob margin;
    private final Handle.Named table;
    private final Handle.Named seriesName;
    private final FuseSeries series;
    private final ObjectBinding<Shown> now;

    /**
     * What is drawn.
     *
     * @param floor A
     * @param ceiling A
     * @param ratings all of the series, A, rising
     * @param fitting those from floor to ceiling
     * @param yours the fuse that was chosen, A; empty where none was
     * @param floorFrom how the floor comes about: "1.25 × 9.3 A"
     * @param ceilingFrom how the ceiling comes about
     */
    record Shown(
            double floor,
            double ceiling,
            List<Double> ratings,
            List<Double> fitting,
            OptionalDouble yours,
            String floorFrom,
            String ceilingFrom)
            implements Told {
        public Shown {
            ratings = List.copyOf(ratings);
            fitting = List.copyOf(fitting);
        }

        String floorAmps() {
            return Telling.exact(Quantity.FUSE_FLOOR, floor);
        }

        String ceilingAmps() {
            return Telling.exact(Quantity.FUSE_CEILING, ceiling);
        }

        boolean fits() {
            return !fitting.isEmpty();
        }

        /** What comes of it, in a line. */
        String verdict() {
            if (fitting.size() == 1) {
                return FigureTexts.of("fuse.one-fits", "fuse", amps(fitting.get(0)));
            }
            if (fits()) {
                return FigureTexts.of(
                        "fuse.several-fit",
                        "fuses",
                        listed(fitting.subList(0, fitting.size() - 1)),
                        "last",
                        amps(fitting.get(fitting.size() - 1)));
            }
            return FigureTexts.of(floor > ceiling ? "fuse.crossed" : "fuse.none");
        }

        @Override
        public String words() {
            final String between =
                    FigureTexts.of(
                            "fuse.between",
                            "floor",
                            floorAmps(),
                            "floor-from",
                            floorFrom,
                            "ceiling",
                            ceilingAmps(),
                            "ceiling-from",
                            ceilingFrom);
            return between
                    + " "
                    + FigureTexts.of(
                            fits() ? "fuse.fit-words" : "fuse.none-words", "verdict", verdict());
        }

        static String amps(final double rating) {
            return FigureText.of(rating, Dimension.CURRENT);
        }

        private static String listed(final List<Double> ratings) {
            return ratings.stream().map(Shown::amps).collect(Collectors.joining(", "));
        }
    }

    FuseBetween(final Figure figure, final Solver solver) {
        this.solver = solver;
        table = figure.named(FigureOption.CABLE_TABLE);
        current =
                Knob.of(
                        FigureTexts.of("circuit-current"),
                        figure.handle(FigureOption.CIRCUIT_CURRENT));
        section =
                Knob.of(
                        FigureTexts.of("cable", "table", table.name()),
                        figure.handle(FigureOption.SECTION));
        cables = Knob.of(FigureTexts.of("together"), figure.handle(FigureOption.TWO_CORE_CABLES));
        margin = Knob.of(FigureTexts.of("margin"), figure.handle(FigureOption.MARGIN));
        seriesName = figure.named(FigureOption.FUSE_SERIES);
        series = FuseSeriesTable.named(seriesName.name());
        now =
                Bindings.createObjectBinding(
                        this::shown, current.stop(), section.stop(), cables.stop(), margin.stop());
    }

    @Override
    public List<Knob> knobs() {
        return Stream.of(current, section, cables, margin).filter(Knob::moves).toList();
    }

    @Override
    public ObjectBinding<Shown> now() {
        return now;
    }

    private Shown shown() {
        final Worked worked =
                new Asking()
                        .with(current)
                        .with(section)
                        .with(Quantity.BUNDLED, CORES * cables.value())
                        .with(margin)
                        .with(table)
                        .with(seriesName)
                        .find(solver, Quantity.FUSE_FLOOR, Quantity.FUSE_CEILING, Quantity.FUSE);
        final double ceiling = worked.value(Quantity.FUSE_CEILING).orElseThrow();
        return new Shown(
                worked.value(Quantity.FUSE_FLOOR).orElseThrow(),
                ceiling,
                series.ratings(),
                fitting(worked.value(Quantity.FUSE), ceiling),
                OptionalDouble.empty(),
                margin.text() + " × " + current.text(),
                ceilingFrom(worked));
    }

    /** From the smallest that fits, which the engine finds, up to the ceiling. */
    private List<Double> fitting(final OptionalDouble smallest, final double ceiling) {
        return smallest.stream()
                .boxed()
                .flatMap(least -> series.ratings().stream().filter(each -> each >= least))
                .filter(each -> each <= ceiling * (1 + StandardSizes.SAME))
                .toList();
    }

    private static String ceilingFrom(final Worked worked) {
        final String alone =
                Telling.result(
                        Quantity.TABLE_AMPACITY,
                        worked.value(Quantity.TABLE_AMPACITY).orElseThrow());
        final double factor = worked.value(Quantity.BUNDLE_FACTOR).orElseThrow();
        final long conductors = Math.round(worked.value(Quantity.BUNDLED).orElseThrow());
        return factor == 1
                ? FigureTexts.of("fuse.alone", "amps", alone)
                : FigureTexts.of(
                        "fuse.bundled",
                        "amps",
                        alone,
                        "factor",
                        FigureText.number(factor, Dimension.FACTOR, 3),
                        "count",
                        conductors);
    }
}
