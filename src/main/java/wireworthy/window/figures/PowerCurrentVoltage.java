package wireworthy.window.figures;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.ObjectBinding;
import javafx.beans.property.SimpleIntegerProperty;
import wireworthy.lessons.Figure;
import wireworthy.lessons.FigureOption;
import wireworthy.rules.Quantity;
import wireworthy.working.Line;
import wireworthy.working.Solver;
import wireworthy.working.Telling;

/** Power, current and voltage: one is held, another moved, and the third follows. */
final class PowerCurrentVoltage implements FigureModel<PowerCurrentVoltage.Shown> {
    /** What can be held, in the order shown. */
    enum Held {
        VOLTAGE,
        POWER,
        CURRENT;

        String words() {
            return FigureTexts.of("pcv." + name().toLowerCase(Locale.ROOT));
        }
    }

    private final Solver solver;
    private final Knob power;
    private final Knob voltage;
    private final Pick held =
            new Pick(
                    FigureTexts.of("pcv.hold"),
                    Stream.of(Held.values()).map(Held::words).toList(),
                    new SimpleIntegerProperty(0));
    private final ObjectBinding<Shown> now;
    private Held before = Held.VOLTAGE;
    private double heldCurrent;

    /**
     * Power and current at one voltage.
     *
     * @param line how the one that follows is worked
     * @param chosen whether the handle stands at this voltage
     */
    record AtVoltage(double voltage, double current, double power, Line line, boolean chosen) {
        String volts() {
            return Telling.result(Quantity.SUPPLY_VOLTAGE, voltage);
        }

        String amps() {
            return Telling.exact(Quantity.LOAD_CURRENT, current);
        }

        String watts() {
            return Telling.result(Quantity.LOAD_POWER, power);
        }
    }

    /**
     * What is drawn.
     *
     * @param held what stays while another is moved
     * @param most the most any setting of the handles gives of what the bars show
     */
    record Shown(Held held, List<AtVoltage> voltages, double most) implements Told {
        public Shown {
            voltages = List.copyOf(voltages);
        }

        /** The one the handle stands at. */
        AtVoltage chosen() {
            return voltages.stream().filter(AtVoltage::chosen).findFirst().orElseThrow();
        }

        /** What a bar shows: the power where the current is held, else the current. */
        double bar(final AtVoltage at) {
            return held == Held.CURRENT ? at.power() : at.current();
        }

        String barText(final AtVoltage at) {
            return held == Held.CURRENT ? at.watts() : at.amps();
        }

        @Override
        public String words() {
            final String others =
                    voltages.stream()
                            .filter(each -> !each.chosen())
                            .map(
                                    each ->
                                            FigureTexts.of(
                                                    "pcv.at",
                                                    "what",
                                                    barText(each),
                                                    "volts",
                                                    each.volts()))
                            .collect(Collectors.joining(FigureTexts.of("and")));
            final String first =
                    FigureTexts.of("pcv.held", "what", held.words()) + " " + sentence();
            final String same = held == Held.CURRENT ? "pcv.same-current" : "pcv.same-load";
            return others.isEmpty() ? first : first + " " + FigureTexts.of(same, "others", others);
        }

        private String sentence() {
            final AtVoltage at = chosen();
            return held == Held.CURRENT
                    ? FigureTexts.of(
                            "pcv.brings",
                            "amps",
                            at.amps(),
                            "watts",
                            at.watts(),
                            "volts",
                            at.volts(),
                            "numbers",
                            at.line().numbers())
                    : FigureTexts.of(
                            "pcv.draws",
                            "amps",
                            at.amps(),
                            "watts",
                            at.watts(),
                            "volts",
                            at.volts(),
                            "numbers",
                            at.line().numbers());
        }
    }

    PowerCurrentVoltage(final Figure figure, final Solver solver) {
        this.solver = solver;
        power = Knob.of(FigureTexts.of("pcv.load"), figure.handle(FigureOption.LOAD_POWER));
        voltage =
                Knob.of(
                        FigureTexts.of("supply-voltage"),
                        figure.handle(FigureOption.SUPPLY_VOLTAGE));
        hold();
        held.chosen().addListener(changed -> hold());
        now =
                Bindings.createObjectBinding(
                        this::shown, power.stop(), voltage.stop(), held.chosen());
    }

    /** What stands at the moment is what is held; the knob of what is held goes away. */
    private void hold() {
        if (before == Held.CURRENT) {
            power.moveTo(product(voltage.value(), heldCurrent).value());
        }
        heldCurrent = line(power.value(), voltage.value()).value();
        before = held();
        power.offered().set(held() == Held.VOLTAGE);
        voltage.offered().set(held() != Held.VOLTAGE);
    }

    private Held held() {
        return Held.values()[held.chosen().get()];
    }

    @Override
    public List<Knob> knobs() {
        return Stream.of(power, voltage).filter(Knob::moves).toList();
    }

    @Override
    public List<Pick> picks() {
        return List.of(held);
    }

    @Override
    public ObjectBinding<Shown> now() {
        return now;
    }

    private Shown shown() {
        return new Shown(
                held(),
                IntStream.rangeClosed(0, voltage.last()).mapToObj(this::atVoltage).toList(),
                held() == Held.CURRENT
                        ? product(voltage.greatest(), heldCurrent).value()
                        : line(power.greatest(), voltage.smallest()).value());
    }

    private AtVoltage atVoltage(final int stop) {
        final double volts = voltage.at(stop);
        final boolean chosen = stop == voltage.stop().get();
        if (held() == Held.CURRENT) {
            final Line line = product(volts, heldCurrent);
            return new AtVoltage(volts, heldCurrent, line.value(), line, chosen);
        }
        final Line line = line(power.value(), volts);
        return new AtVoltage(volts, line.value(), power.value(), line, chosen);
    }

    private Line line(final double watts, final double volts) {
        final Asking asking =
                new Asking().with(Quantity.LOAD_POWER, watts).with(Quantity.SUPPLY_VOLTAGE, volts);
        return Telling.lines(asking.find(solver, Quantity.LOAD_CURRENT)).get(0);
    }

    private Line product(final double volts, final double amps) {
        final Asking asking =
                new Asking().with(Quantity.VOLTAGE, volts).with(Quantity.CURRENT, amps);
        return Telling.lines(asking.find(solver, Quantity.POWER)).get(0);
    }
}
