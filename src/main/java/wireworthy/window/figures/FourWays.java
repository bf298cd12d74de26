package wireworthy.window.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.Observable;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.ObjectBinding;
import wireworthy.facts.CableTable;
import wireworthy.facts.CableTables;
import wireworthy.facts.StandardSizes;
import wireworthy.lessons.Figure;
import wireworthy.lessons.FigureOption;
import wireworthy.lessons.Handle;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.working.Remedies;
import wireworthy.working.Remedy;
import wireworthy.working.Solver;
import wireworthy.working.Telling;
import wireworthy.working.Worked;

/** A circuit with too much drop, and the four ways out of it with what each comes to. */
final class FourWays implements FigureModel<FourWays.Shown> {
    private static final Quantity[] ASKED = {
        Quantity.DROP, Quantity.DROP_PERCENT, Quantity.DROP_LIMIT, Quantity.LOOP_LENGTH
    };

    private final Solver solver;
    private final Knob current;
    private final Knob section;
    private final Knob length;
    private final Knob voltage;
    private final Knob limit;
    private final Knob resistivity;
    private final Handle.Named table;
    private final ObjectBinding<Shown> now;

    /** A circuit; SI. */
    private record Circuit(double amps, double section, double metres, double volts) {}

    /**
     * What is drawn.
     *
     * @param limit V, at the voltage of the circuit as it is
     * @param supply V, of the circuit as it is
     * @param ways the remedies; none while the limit holds
     */
    record Shown(Way asItIs, double limit, double supply, List<Way> ways) implements Told {
        public Shown {
            ways = List.copyOf(ways);
        }

        String limitVolts() {
            return Telling.result(Quantity.DROP_LIMIT, limit);
        }

        /** The limit as a share of the voltage, whichever that is: "3 %". */
        String limitPercent() {
            return Telling.result(Quantity.DROP_PERCENT, limit / supply);
        }

        /** What comes of it, in a line. */
        String verdict() {
            return FigureTexts.of(
                    asItIs.within() ? "ways.within" : "ways.past",
                    "drop",
                    asItIs.dropVolts(),
                    "limit",
                    limitVolts(),
                    "percent",
                    limitPercent(),
                    "volts",
                    FigureText.of(supply, Dimension.VOLTAGE));
        }

        @Override
        public String words() {
            final String first = asItIs.words() + " " + sentence(verdict());
            return ways.isEmpty()
                    ? first
                    : first + " " + ways.stream().map(Way::words).collect(Collectors.joining(" "));
        }

        private static String sentence(final String verdict) {
            return FigureTexts.of("so", "verdict", verdict);
        }
    }

    FourWays(final Figure figure, final Solver solver) {
        this.solver = solver;
        current =
                Knob.of(
                        FigureTexts.of("circuit-current"),
                        figure.handle(FigureOption.CIRCUIT_CURRENT));
        section = Knob.of(FigureTexts.of("section"), figure.handle(FigureOption.SECTION));
        length = Knob.of(FigureTexts.of("length"), figure.handle(FigureOption.ONE_WAY_LENGTH));
        voltage =
                Knob.of(
                        FigureTexts.of("supply-voltage"),
                        figure.handle(FigureOption.SUPPLY_VOLTAGE));
        limit = Knob.of(FigureTexts.of("limit"), figure.handle(FigureOption.DROP_LIMIT));
        resistivity =
                Knob.of(FigureTexts.of("resistivity"), figure.handle(FigureOption.RESISTIVITY));
        table = figure.named(FigureOption.CABLE_TABLE);
        now =
                Bindings.createObjectBinding(
                        this::shown, all().map(Knob::stop).toArray(Observable[]::new));
    }

    private Stream<Knob> all() {
        return Stream.of(current, section, length, voltage, limit, resistivity);
    }

    @Override
    public List<Knob> knobs() {
        return all().filter(Knob::moves).toList();
    }

    @Override
    public ObjectBinding<Shown> now() {
        return now;
    }

    private Shown shown() {
        final Circuit circuit =
                new Circuit(current.value(), section.value(), length.value(), voltage.value());
        final Way asItIs = way(FigureTexts.of("ways.as-it-is"), text(circuit), circuit, 1);
        final List<Way> ways = new ArrayList<>();
        Remedies.of(asking(circuit).around(solver, ASKED))
                .forEach(remedy -> way(circuit, remedy).ifPresent(ways::add));
        return new Shown(asItIs, asItIs.limit(), circuit.volts(), ways);
    }

    private static String text(final Circuit circuit) {
        return FigureTexts.of(
                "ways.circuit",
                "section",
                FigureText.of(circuit.section(), Dimension.AREA, 4),
                "length",
                FigureText.of(circuit.metres(), Dimension.LENGTH),
                "volts",
                FigureText.of(circuit.volts(), Dimension.VOLTAGE));
    }

    private Optional<Way> way(final Circuit it, final Remedy remedy) {
        final double value = remedy.value();
        return switch (remedy.id()) {
            case "shorter-run" ->
                    Optional.of(
                            way(
                                    FigureTexts.of("ways.shorter"),
                                    FigureTexts.of(
                                            "one-way",
                                            "length",
                                            FigureText.roundedDown(value, Dimension.LENGTH)),
                                    new Circuit(it.amps(), it.section(), value, it.volts()),
                                    1));
            case "split-circuit" -> Optional.of(split(it, value));
            case "larger-section" ->
                    Optional.of(
                            way(
                                    FigureTexts.of("ways.larger"),
                                    sold(value),
                                    new Circuit(it.amps(), value, it.metres(), it.volts()),
                                    1));
            case "higher-voltage" -> Optional.of(higher(it, value));
            default -> Optional.empty();
        };
    }

    /** A section as it is sold: "6 mm²", "8 AWG, 8.37 mm²". */
    private String sold(final double section) {
        final CableTable sizes = CableTables.named(table.name());
        final String gauge =
                sizes.byGauge()
                        ? sizes.rowFor(FigureText.edge(section, Dimension.AREA))
                                .map(row -> row.label() + ", ")
                                .orElse("")
                        : "";
        return gauge + FigureText.roundedUp(section, Dimension.AREA);
    }

    /** The current shared evenly by as many circuits as keep each within what it may carry. */
    private Way split(final Circuit it, final double most) {
        final int circuits = (int) Math.ceil(it.amps() / most * (1 - StandardSizes.SAME));
        return way(
                FigureTexts.of("ways.circuits", "count", circuits),
                FigureTexts.of(
                        "ways.each",
                        "amps",
                        FigureText.roundedUp(it.amps() / circuits, Dimension.CURRENT)),
                new Circuit(it.amps() / circuits, it.section(), it.metres(), it.volts()),
                circuits);
    }

    /** The same watts at a higher voltage. */
    private Way higher(final Circuit it, final double volts) {
        final double watts =
                new Asking()
                        .with(Quantity.VOLTAGE, it.volts())
                        .with(Quantity.CURRENT, it.amps())
                        .value(solver, Quantity.POWER);
        final double amps =
                new Asking()
                        .with(Quantity.POWER, watts)
                        .with(Quantity.VOLTAGE, volts)
                        .value(solver, Quantity.CURRENT);
        return way(
                FigureTexts.of("ways.higher"),
                FigureText.of(volts, Dimension.VOLTAGE)
                        + ", "
                        + FigureText.of(amps, Dimension.CURRENT),
                new Circuit(amps, it.section(), it.metres(), volts),
                1);
    }

    private Way way(
            final String name, final String change, final Circuit circuit, final int circuits) {
        final Worked worked = asking(circuit).find(solver, ASKED);
        return new Way(
                name,
                change,
                worked.value(Quantity.DROP).orElseThrow(),
                worked.value(Quantity.DROP_PERCENT).orElseThrow(),
                worked.value(Quantity.DROP_LIMIT).orElseThrow(),
                circuits * circuit.section() * worked.value(Quantity.LOOP_LENGTH).orElseThrow());
    }

    private Asking asking(final Circuit circuit) {
        return new Asking()
                .with(Quantity.CIRCUIT_CURRENT, circuit.amps())
                .with(Quantity.SECTION, circuit.section())
                .with(Quantity.ONE_WAY_LENGTH, circuit.metres())
                .with(Quantity.SUPPLY_VOLTAGE, circuit.volts())
                .with(limit)
                .with(resistivity)
                .with(table);
    }
}
