package wireworthy.window.figures;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import javafx.beans.Observable;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.ObjectBinding;
import wireworthy.facts.StandardSizes;
import wireworthy.lessons.Figure;
import wireworthy.lessons.FigureOption;
import wireworthy.rules.Quantity;
import wireworthy.working.Line;
import wireworthy.working.Solver;
import wireworthy.working.Telling;
import wireworthy.working.Unworkable;
import wireworthy.working.Worked;

/** How the volts fall along the cable, out and back, against the limit. */
final class VoltsAlongTheRun implements FigureModel<VoltsAlongTheRun.Shown> {
    private final Solver solver;
    private final Knob current;
    private final Knob section;
    private final Knob length;
    private final Knob voltage;
    private final Knob limit;
    private final Knob resistivity;
    private final ObjectBinding<Shown> now;

    /**
     * What is drawn. Volts and metres; the share is of one.
     *
     * @param numbers the lines of the working up to the drop
     * @param left what the load gets; empty where the cable would take more volts than there are
     */
    record Shown(
            double supply,
            double length,
            double drop,
            double share,
            double limit,
            OptionalDouble left,
            List<String> numbers)
            implements Told {
        public Shown {
            numbers = List.copyOf(numbers);
        }

        boolean within() {
            return drop <= limit * (1 + StandardSizes.SAME);
        }

        boolean possible() {
            return left.isPresent();
        }

        String supplyVolts() {
            return Telling.result(Quantity.SUPPLY_VOLTAGE, supply);
        }

        String dropVolts() {
            return Telling.exact(Quantity.DROP, drop);
        }

        String percent() {
            return Telling.exact(Quantity.DROP_PERCENT, share);
        }

        String limitVolts() {
            return Telling.result(Quantity.DROP_LIMIT, limit);
        }

        String leftVolts() {
            return Telling.exact(Quantity.VOLTAGE_AT_LOAD, left.orElse(0));
        }

        String metres() {
            return Telling.result(Quantity.ONE_WAY_LENGTH, length);
        }

        /** What comes of it, in a line. */
        String verdict() {
            if (!possible()) {
                return FigureTexts.of("volts.all");
            }
            return FigureTexts.of(within() ? "volts.within" : "volts.past", "volts", leftVolts());
        }

        @Override
        public String words() {
            return FigureTexts.of(
                    "volts.words",
                    "drop",
                    dropVolts(),
                    "percent",
                    percent(),
                    "supply",
                    supplyVolts(),
                    "length",
                    metres(),
                    "numbers",
                    String.join("; ", numbers),
                    "limit",
                    limitVolts(),
                    "verdict",
                    verdict());
        }
    }

    VoltsAlongTheRun(final Figure figure, final Solver solver) {
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
        final Asking asking = new Asking();
        all().forEach(asking::with);
        final Worked worked =
                asking.find(solver, Quantity.DROP, Quantity.DROP_PERCENT, Quantity.DROP_LIMIT);
        final double drop = worked.value(Quantity.DROP).orElseThrow();
        return new Shown(
                voltage.value(),
                length.value(),
                drop,
                worked.value(Quantity.DROP_PERCENT).orElseThrow(),
                worked.value(Quantity.DROP_LIMIT).orElseThrow(),
                left(drop),
                lines(worked));
    }

    private static List<String> lines(final Worked worked) {
        return Telling.lines(worked).stream()
                .filter(line -> line.ref().quantity() != Quantity.DROP_PERCENT)
                .filter(line -> line.ref().quantity() != Quantity.DROP_LIMIT)
                .map(Line::numbers)
                .toList();
    }

    private OptionalDouble left(final double drop) {
        try {
            return new Asking()
                    .with(voltage)
                    .with(Quantity.DROP, drop)
                    .find(solver, Quantity.VOLTAGE_AT_LOAD)
                    .value(Quantity.VOLTAGE_AT_LOAD);
        } catch (final Unworkable noneLeft) {
            return OptionalDouble.empty();
        }
    }
}
