package wireworthy.window.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.Observable;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.ObjectBinding;
import wireworthy.facts.BundleFactors;
import wireworthy.facts.CableTable;
import wireworthy.facts.CableTables;
import wireworthy.facts.FactTables;
import wireworthy.facts.FuseSeries;
import wireworthy.facts.FuseSeriesTable;
import wireworthy.facts.Source;
import wireworthy.facts.TradeFigure;
import wireworthy.lessons.Figure;
import wireworthy.lessons.FigureOption;
import wireworthy.lessons.Handle;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.working.Solver;
import wireworthy.working.Telling;
import wireworthy.working.Worked;

/** What heat and company leave of the ampacity in the table, factor by factor. */
final class DeratedAmpacity implements FigureModel<DeratedAmpacity.Shown> {
    /** Out and back. */
    private static final int CORES = 2;

    private final Solver solver;
    private final Knob section;
    private final Knob ambient;
    private final Knob cables;
    private final Tick engineSpace;
    private final Tick inWall;
    private final Handle.Named table;
    private final Handle.Named seriesName;
    private final CableTable sizes;
    private final FuseSeries series;
    private final double most;
    private final ObjectBinding<Shown> now;

    /**
     * What is drawn.
     *
     * @param cable the section with its table and insulation
     * @param inTable A, before any lowering
     * @param tableSource where the table is published
     * @param ampacity A, what remains; 0 where nothing does
     * @param fuse A, the largest standard rating that may guard it; empty where none is that small
     * @param series the kind of fuse
     * @param most A, the most any of the sections carries in the table
     */
    record Shown(
            String cable,
            double inTable,
            String tableSource,
            List<Factor> factors,
            double ampacity,
            OptionalDouble fuse,
            String series,
            double most)
            implements Told {
        public Shown {
            factors = List.copyOf(factors);
        }

        String tableAmps() {
            return Telling.result(Quantity.TABLE_AMPACITY, inTable);
        }

        String amps() {
            return Telling.exact(Quantity.FUSE_CEILING, ampacity);
        }

        boolean usable() {
            return fuse.isPresent();
        }

        /** What comes of it, in a line. */
        String verdict() {
            if (ampacity <= 0) {
                return FigureTexts.of("derated.nothing");
            }
            return fuse.isPresent()
                    ? FigureTexts.of(
                            "derated.remain",
                            "amps",
                            amps(),
                            "fuse",
                            FigureText.of(fuse.getAsDouble(), Dimension.CURRENT),
                            "series",
                            series)
                    : FigureTexts.of("derated.none", "amps", amps(), "series", series);
        }

        @Override
        public String words() {
            return FigureTexts.of(
                    "derated.words",
                    "cable",
                    cable,
                    "amps",
                    tableAmps(),
                    "source",
                    tableSource,
                    "factors",
                    factors.stream().map(Shown::sentence).collect(Collectors.joining(" ")),
                    "verdict",
                    verdict());
        }

        private static String sentence(final Factor factor) {
            return FigureTexts.of(
                    "derated.factor",
                    "what",
                    factor.name(),
                    "factor",
                    factor.text(),
                    "left",
                    factor.leftAmps(),
                    "source",
                    factor.source());
        }
    }

    DeratedAmpacity(final Figure figure, final Solver solver) {
        this.solver = solver;
        table = figure.named(FigureOption.CABLE_TABLE);
        sizes = CableTables.named(table.name());
        seriesName = figure.named(FigureOption.FUSE_SERIES);
        series = FuseSeriesTable.named(seriesName.name());
        section =
                Knob.of(
                        FigureTexts.of("cable", "table", table.name()),
                        figure.handle(FigureOption.SECTION));
        ambient =
                Knob.of(
                        FigureTexts.of("derated.air"),
                        figure.handle(FigureOption.AMBIENT_TEMPERATURE));
        cables = Knob.of(FigureTexts.of("together"), figure.handle(FigureOption.TWO_CORE_CABLES));
        engineSpace =
                Tick.of(FigureTexts.of("derated.engine"), figure.yes(FigureOption.ENGINE_SPACE));
        inWall =
                Tick.of(
                        FigureTexts.of("derated.wall"),
                        figure.yes(FigureOption.IN_THERMAL_INSULATION));
        most =
                new Asking()
                        .with(Quantity.SECTION, section.greatest())
                        .with(table)
                        .value(solver, Quantity.TABLE_AMPACITY);
        now = Bindings.createObjectBinding(this::shown, moving());
    }

    private Observable[] moving() {
        return Stream.concat(all().map(Knob::stop), Stream.of(engineSpace, inWall).map(Tick::on))
                .toArray(Observable[]::new);
    }

    private Stream<Knob> all() {
        return Stream.of(section, ambient, cables);
    }

    @Override
    public List<Knob> knobs() {
        return all().filter(Knob::moves).toList();
    }

    /** Only the boat tables have a factor for engine spaces. */
    @Override
    public List<Tick> ticks() {
        return sizes.engineSpaceFactors().isEmpty()
                ? List.of(inWall)
                : List.of(engineSpace, inWall);
    }

    @Override
    public ObjectBinding<Shown> now() {
        return now;
    }

    private boolean hot() {
        return engineSpace.on().get() && !sizes.engineSpaceFactors().isEmpty();
    }

    private Shown shown() {
        final Worked worked = worked();
        final double ampacity = worked.value(Quantity.AMPACITY).orElse(0);
        final double inTable = worked.value(Quantity.TABLE_AMPACITY).orElseThrow();
        return new Shown(
                FigureTexts.of(
                        "derated.cable",
                        "section",
                        section.text(),
                        "insulation",
                        FigureText.of(insulation(), Dimension.TEMPERATURE)),
                inTable,
                sizes.source().text(),
                factors(worked, inTable, ampacity),
                ampacity,
                series.atOrBelow(ampacity),
                seriesName.name(),
                most);
    }

    private Worked worked() {
        return new Asking()
                .with(section)
                .with(ambient)
                .with(Quantity.BUNDLED, CORES * cables.value())
                .with(Quantity.ENGINE_SPACE, hot() ? "yes" : "no")
                .with(Quantity.IN_THERMAL_INSULATION, inWall.on().get() ? "yes" : "no")
                .with(table)
                .find(
                        solver,
                        Quantity.TABLE_AMPACITY,
                        Quantity.AMBIENT_FACTOR,
                        Quantity.BUNDLE_FACTOR,
                        Quantity.AMPACITY);
    }

    private double insulation() {
        return sizes.defaultInsulationTemperature();
    }

    private List<Factor> factors(final Worked worked, final double inTable, final double ampacity) {
        final List<Factor> factors = new ArrayList<>();
        final double heat = worked.value(Quantity.AMBIENT_FACTOR).orElse(0);
        factors.add(new Factor(around(), heat, inTable * heat, heatSource()));
        final double company = worked.value(Quantity.BUNDLE_FACTOR).orElseThrow();
        final double conductors = CORES * cables.value();
        factors.add(
                new Factor(
                        FigureTexts.of(
                                "conductors",
                                "count",
                                FigureText.number(conductors, Dimension.COUNT, 3)),
                        company,
                        inTable * heat * company,
                        BundleFactors.source(conductors).text()));
        if (inWall.on().get()) {
            final TradeFigure wall = TradeFigure.IN_THERMAL_INSULATION;
            factors.add(
                    new Factor(
                            FigureTexts.of("derated.wall.factor"),
                            wall.value(),
                            ampacity,
                            wall.source().text()));
        }
        return factors;
    }

    private String around() {
        return FigureTexts.of(hot() ? "derated.hot" : "derated.around", "air", ambient.text());
    }

    private String heatSource() {
        final String tables = FactTables.named("ambient-factors").source().text();
        final String form = FigureTexts.of("derated.formula", "tables", tables);
        return hot()
                ? sizes.engineSpace(insulation())
                        .map(factor -> factor.source())
                        .map(Source::text)
                        .map(
                                source ->
                                        FigureTexts.of(
                                                "derated.smaller", "source", source, "other", form))
                        .orElse(form)
                : form;
    }
}
