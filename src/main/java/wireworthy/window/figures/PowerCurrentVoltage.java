package wireworthy.window.figures;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.ObjectBinding;
import wireworthy.lessons.Figure;
import wireworthy.lessons.FigureOption;
import wireworthy.rules.Quantity;
import wireworthy.working.Line;
import wireworthy.working.Solver;
import wireworthy.working.Telling;

/** The current one power draws at each system voltage. */
final class PowerCurrentVoltage implements FigureModel<PowerCurrentVoltage.Shown> {
    private final Solver solver;
    private final Knob power;
    private final Knob voltage;
    private final double mostCurrent;
    private final ObjectBinding<Shown> now;

    /**
     * The current at one voltage.
     *
     * @param line how it is worked
     * @param chosen whether the handle stands at this voltage
     */
    record AtVoltage(double voltage, double current, Line line, boolean chosen) {
        String volts() {
            return Telling.result(Quantity.SUPPLY_VOLTAGE, voltage);
        }

        String amps() {
            return Telling.result(Quantity.LOAD_CURRENT, current);
        }
    }

    /**
     * What is drawn.
     *
     * @param power W
     * @param mostCurrent A, the most any setting of the handles gives
     */
    record Shown(double power, List<AtVoltage> voltages, double mostCurrent) implements Told {
        public Shown {
            voltages = List.copyOf(voltages);
        }

        /** The one the handle stands at. */
        AtVoltage chosen() {
            return voltages.stream().filter(AtVoltage::chosen).findFirst().orElseThrow();
        }

        @Override
        public String words() {
            final String others =
                    voltages.stream()
                            .filter(each -> !each.chosen())
                            .map(each -> each.amps() + " at " + each.volts())
                            .collect(Collectors.joining(" and "));
            final String first =
                    "A load of %s draws %s at %s: %s."
                            .formatted(
                                    Telling.result(Quantity.LOAD_POWER, power),
                                    chosen().amps(),
                                    chosen().volts(),
                                    chosen().line().numbers());
            return others.isEmpty() ? first : first + " The same load would draw " + others + ".";
        }
    }

    PowerCurrentVoltage(final Figure figure, final Solver solver) {
        this.solver = solver;
        power = Knob.of("power of the load", figure.handle(FigureOption.LOAD_POWER));
        voltage = Knob.of("supply voltage", figure.handle(FigureOption.SUPPLY_VOLTAGE));
        mostCurrent = line(power.greatest(), voltage.smallest()).value();
        now = Bindings.createObjectBinding(this::shown, power.stop(), voltage.stop());
    }

    @Override
    public List<Knob> knobs() {
        return Stream.of(power, voltage).filter(Knob::moves).toList();
    }

    @Override
    public ObjectBinding<Shown> now() {
        return now;
    }

    private Shown shown() {
        return new Shown(
                power.value(),
                IntStream.rangeClosed(0, voltage.last()).mapToObj(this::atVoltage).toList(),
                mostCurrent);
    }

    private AtVoltage atVoltage(final int stop) {
        final Line line = line(power.value(), voltage.at(stop));
        return new AtVoltage(voltage.at(stop), line.value(), line, stop == voltage.stop().get());
    }

    private Line line(final double watts, final double volts) {
        final Asking asking =
                new Asking().with(Quantity.LOAD_POWER, watts).with(Quantity.SUPPLY_VOLTAGE, volts);
        return Telling.lines(asking.find(solver, Quantity.LOAD_CURRENT)).get(0);
    }
}
