package wireworthy.window.figures;

import java.util.List;
import java.util.stream.Stream;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.ObjectBinding;
import wireworthy.lessons.Figure;
import wireworthy.lessons.FigureOption;
import wireworthy.rules.Quantity;
import wireworthy.working.Line;
import wireworthy.working.Solver;
import wireworthy.working.Telling;

/** What an appliance behind a converter takes from the battery. */
final class ConverterCurrent implements FigureModel<ConverterCurrent.Shown> {
    /** Mains voltage in most countries, V; it stands beside the battery's for comparison only. */
    static final double MAINS = 230;

    private final Solver solver;
    private final Knob power;
    private final Knob efficiency;
    private final Knob voltage;
    private final double mostCurrent;
    private final double mostTaken;
    private final ObjectBinding<Shown> now;

    /**
     * What is drawn.
     *
     * @param delivered W, what the appliance gets
     * @param taken W, what the battery gives
     * @param supply how the battery-side current is worked
     * @param mains A on the other side of the converter
     * @param mostCurrent A, the most any setting of the handles gives
     * @param mostTaken W, likewise
     */
    record Shown(
            double delivered,
            double taken,
            double efficiency,
            double voltage,
            Line supply,
            double mains,
            double mostCurrent,
            double mostTaken)
            implements Told {
        String batteryAmps() {
            return Telling.exact(Quantity.SUPPLY_CURRENT, supply.value());
        }

        String mainsAmps() {
            return Telling.result(Quantity.CURRENT, mains);
        }

        String deliveredWatts() {
            return Telling.result(Quantity.POWER, delivered);
        }

        String takenWatts() {
            return Telling.result(Quantity.POWER, taken);
        }

        String volts() {
            return Telling.result(Quantity.SUPPLY_VOLTAGE, voltage);
        }

        String percent() {
            return Telling.result(Quantity.EFFICIENCY, efficiency);
        }

        @Override
        public String words() {
            return FigureTexts.of(
                    "converter.words",
                    "delivered",
                    deliveredWatts(),
                    "efficiency",
                    percent(),
                    "taken",
                    takenWatts(),
                    "volts",
                    volts(),
                    "amps",
                    batteryAmps(),
                    "numbers",
                    supply.numbers(),
                    "mains",
                    mainsAmps());
        }
    }

    ConverterCurrent(final Figure figure, final Solver solver) {
        this.solver = solver;
        power = Knob.of(FigureTexts.of("converter.power"), figure.handle(FigureOption.LOAD_POWER));
        efficiency =
                Knob.of(
                        FigureTexts.of("converter.efficiency"),
                        figure.handle(FigureOption.EFFICIENCY));
        voltage =
                Knob.of(
                        FigureTexts.of("converter.voltage"),
                        figure.handle(FigureOption.SUPPLY_VOLTAGE));
        mostCurrent = supply(power.greatest(), efficiency.smallest(), voltage.smallest()).value();
        mostTaken = taken(voltage.smallest(), mostCurrent);
        now =
                Bindings.createObjectBinding(
                        this::shown, power.stop(), efficiency.stop(), voltage.stop());
    }

    @Override
    public List<Knob> knobs() {
        return Stream.of(power, efficiency, voltage).filter(Knob::moves).toList();
    }

    @Override
    public ObjectBinding<Shown> now() {
        return now;
    }

    private Shown shown() {
        final Line supply = supply(power.value(), efficiency.value(), voltage.value());
        return new Shown(
                power.value(),
                taken(voltage.value(), supply.value()),
                efficiency.value(),
                voltage.value(),
                supply,
                mains(),
                mostCurrent,
                mostTaken);
    }

    private Line supply(final double watts, final double share, final double volts) {
        final Asking asking =
                new Asking()
                        .with(Quantity.LOAD_POWER, watts)
                        .with(Quantity.EFFICIENCY, share)
                        .with(Quantity.SUPPLY_VOLTAGE, volts);
        return Telling.lines(asking.find(solver, Quantity.SUPPLY_CURRENT)).get(0);
    }

    private double taken(final double volts, final double amps) {
        return new Asking()
                .with(Quantity.VOLTAGE, volts)
                .with(Quantity.CURRENT, amps)
                .value(solver, Quantity.POWER);
    }

    private double mains() {
        return new Asking()
                .with(Quantity.POWER, power.value())
                .with(Quantity.VOLTAGE, MAINS)
                .value(solver, Quantity.CURRENT);
    }
}
