package wireworthy.window.figures;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javafx.beans.Observable;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.ObjectBinding;
import wireworthy.facts.FuseTimes;
import wireworthy.lessons.Figure;
import wireworthy.lessons.FigureOption;
import wireworthy.lessons.Handle;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.working.Caution;
import wireworthy.working.Line;
import wireworthy.working.Solver;
import wireworthy.working.Telling;
import wireworthy.working.Worked;

/**
 * A short circuit at the end of a cable: the limits of time in which the fuse opens, against the
 * time the cable takes to heat to the end of what its insulation bears.
 */
final class FuseOrCable implements FigureModel<Fault> {
    private static final Set<String> ABOUT_THE_FUSE =
            Set.of("fuse-above-cable", "fuse-voltage-low", "breaking-capacity-low", Fault.UNKNOWN);

    private final Solver solver;
    private final Knob fuse;
    private final Knob section;
    private final Knob insulation;
    private final Knob voltage;
    private final Knob resistance;
    private final Knob length;
    private final Knob resistivity;
    private final Handle.Named table;
    private final Handle.Named series;
    private final FuseTimes times;
    private final ObjectBinding<Fault> now;

    FuseOrCable(final Figure figure, final Solver solver) {
        this.solver = solver;
        fuse = Knob.of(FigureTexts.of("fault.fuse"), figure.handle(FigureOption.FUSE));
        section = Knob.of(FigureTexts.of("section"), figure.handle(FigureOption.SECTION));
        insulation =
                Knob.of(
                        FigureTexts.of("fault.insulation"),
                        figure.handle(FigureOption.INSULATION_TEMPERATURE));
        voltage =
                Knob.of(
                        FigureTexts.of("supply-voltage"),
                        figure.handle(FigureOption.SUPPLY_VOLTAGE));
        resistance =
                Knob.of(
                        FigureTexts.of("fault.resistance"),
                        figure.handle(FigureOption.INTERNAL_RESISTANCE));
        length = Knob.of(FigureTexts.of("length"), figure.handle(FigureOption.ONE_WAY_LENGTH));
        resistivity =
                Knob.of(FigureTexts.of("resistivity"), figure.handle(FigureOption.RESISTIVITY));
        table = figure.named(FigureOption.CABLE_TABLE);
        series = figure.named(FigureOption.FUSE_SERIES);
        times = FuseTimes.of(series.name());
        now =
                Bindings.createObjectBinding(
                        this::shown, all().map(Knob::stop).toArray(Observable[]::new));
    }

    private Stream<Knob> all() {
        return Stream.of(fuse, section, insulation, voltage, resistance, length, resistivity);
    }

    /** The power of ten below every current the handles give, A. */
    int leastPower() {
        return (int) Math.floor(Math.log10(fuse.smallest()));
    }

    /** The power of ten above every current the handles give, A. */
    int mostPower() {
        final double most =
                new Asking()
                        .with(Quantity.SUPPLY_VOLTAGE, voltage.greatest())
                        .with(Quantity.INTERNAL_RESISTANCE, resistance.smallest())
                        .with(Quantity.ONE_WAY_LENGTH, length.smallest())
                        .with(Quantity.SECTION, section.greatest())
                        .with(Quantity.RESISTIVITY, resistivity.smallest())
                        .value(solver, Quantity.SHORT_CIRCUIT_CURRENT);
        return (int) Math.ceil(Math.log10(Math.max(most, 10 * fuse.greatest())));
    }

    @Override
    public List<Knob> knobs() {
        return all().filter(Knob::moves).toList();
    }

    @Override
    public ObjectBinding<Fault> now() {
        return now;
    }

    private Fault shown() {
        final Asking asking = new Asking().with(table).with(series);
        all().forEach(asking::with);
        final Worked worked =
                asking.find(
                        solver,
                        Quantity.SHORT_CIRCUIT_CURRENT,
                        Quantity.ADIABATIC_K,
                        Quantity.ADIABATIC_TIME,
                        Quantity.FUSE_TIME_SHORTEST,
                        Quantity.FUSE_TIME_LONGEST);
        final double root = worked.value(Quantity.ADIABATIC_K).orElseThrow() * section.value();
        return new Fault(
                fuse.value(),
                FigureTexts.of(
                        "fault.cable", "section", section.text(), "insulation", insulation.text()),
                times.rows(),
                root * root,
                worked.value(Quantity.SHORT_CIRCUIT_CURRENT).orElseThrow(),
                worked.value(Quantity.FUSE_TIME_SHORTEST),
                worked.value(Quantity.FUSE_TIME_LONGEST),
                worked.value(Quantity.ADIABATIC_TIME),
                heating(worked),
                dangers(asking));
    }

    private static String heating(final Worked worked) {
        if (worked.value(Quantity.ADIABATIC_TIME).isEmpty()) {
            return FigureTexts.of("fault.heat-given");
        }
        return Telling.lines(worked).stream()
                .filter(line -> line.ref().equals(Ref.circuit(Quantity.ADIABATIC_TIME)))
                .map(Line::numbers)
                .map(sum -> FigureTexts.of("fault.sum", "sum", sum, "k", k(worked)))
                .findFirst()
                .orElseThrow();
    }

    private static String k(final Worked worked) {
        return Telling.exact(
                Quantity.ADIABATIC_K, worked.value(Quantity.ADIABATIC_K).orElseThrow());
    }

    /** Of the cautions those about this fuse: its rating, its voltage, what it can break. */
    private List<Caution> dangers(final Asking asking) {
        return asking.cautions(solver, Quantity.FUSE).stream()
                .filter(caution -> ABOUT_THE_FUSE.contains(caution.id()))
                .toList();
    }
}
