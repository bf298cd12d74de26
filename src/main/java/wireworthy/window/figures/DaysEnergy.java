package wireworthy.window.figures;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.Observable;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.ObjectBinding;
import wireworthy.facts.StandardSizes;
import wireworthy.lessons.Figure;
import wireworthy.lessons.FigureOption;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.working.Solver;
import wireworthy.working.Telling;

/** What goes out of a bank in a day, what comes in, and how long the bank lasts. */
final class DaysEnergy implements FigureModel<DaysEnergy.Shown> {
    private final Solver solver;
    private final Knob voltage;
    private final Knob capacity;
    private final Knob share;
    private final Knob panel;
    private final Knob sunHours;
    private final Knob panelShare;
    private final Knob engineCurrent;
    private final Knob engineTime;
    private final Knob engineShare;
    private final List<LoadSwitch> switches;
    private final ObjectBinding<Shown> now;

    /**
     * A load in its day.
     *
     * @param energy J it takes in a day; 0 while it is off
     */
    record Load(LoadSwitch load, boolean on, double energy) {
        String wattHours() {
            return on ? Shown.wattHours(energy) : FigureTexts.of("off");
        }
    }

    /**
     * What is drawn. Energies in J.
     *
     * @param sun what comes in from the panels
     * @param engine what comes in from the alternator
     * @param out what all loads take
     * @param balance what is left over at the end of the day; less than nothing where it falls
     *     short
     * @param usable what may be taken out of the full bank
     * @param days how many days the bank lasts without charge; empty with nothing on
     * @param daysShort how many days it lasts with this charge; empty where that covers the day
     */
    record Shown(
            List<Load> loads,
            double sun,
            double engine,
            double out,
            double balance,
            double usable,
            OptionalDouble days,
            OptionalDouble daysShort,
            String capacity,
            String share)
            implements Told {
        public Shown {
            loads = List.copyOf(loads);
        }

        boolean covered() {
            return balance >= -StandardSizes.SAME * out;
        }

        /** What comes of it, in a line. */
        String verdict() {
            if (out == 0) {
                return FigureTexts.of("day.nothing");
            }
            return covered()
                    ? FigureTexts.of("day.covered", "left", wattHours(balance))
                    : FigureTexts.of(
                            "day.short",
                            "lack",
                            wattHours(-balance),
                            "days",
                            dayText("day.down", daysShort.orElseThrow()));
        }

        /** What the verdict leaves to say of how long the bank lasts; nothing where it said so. */
        String further() {
            return !covered() && sun + engine == 0 ? "" : lasts();
        }

        /** How long the bank lasts without charge. */
        String lasts() {
            return days.isEmpty()
                    ? FigureTexts.of("day.keeps")
                    : FigureTexts.of("day.lasts", "days", dayText("day", days.getAsDouble()));
        }

        @Override
        public String words() {
            final String list =
                    loads.stream()
                            .filter(Load::on)
                            .map(each -> each.load().text() + ": " + each.wattHours())
                            .collect(Collectors.joining("; "));
            final String used =
                    out == 0
                            ? ""
                            : FigureTexts.of("day.out", "list", list, "all", wattHours(out)) + " ";
            return used
                    + FigureTexts.of(
                            "day.words",
                            "sun",
                            wattHours(sun),
                            "engine",
                            wattHours(engine),
                            "verdict",
                            Told.capital(verdict()),
                            "capacity",
                            capacity,
                            "share",
                            share,
                            "usable",
                            wattHours(usable),
                            "lasts",
                            further().isEmpty() ? "" : "; " + further());
        }

        static String wattHours(final double joule) {
            return Telling.result(Quantity.DAILY_ENERGY, joule);
        }

        private static String dayText(final String key, final double days) {
            final String number = FigureText.of(days, Dimension.FACTOR);
            final String one = number.equals("1") ? ".one" : ".several";
            return FigureTexts.of(key + one, "count", number);
        }
    }

    DaysEnergy(final Figure figure, final Solver solver) {
        this.solver = solver;
        voltage =
                Knob.of(FigureTexts.of("day.voltage"), figure.handle(FigureOption.SUPPLY_VOLTAGE));
        capacity = Knob.of(FigureTexts.of("day.bank"), figure.handle(FigureOption.BANK_CAPACITY));
        share = Knob.of(FigureTexts.of("usable-share"), figure.handle(FigureOption.USABLE_SHARE));
        panel = Knob.of(FigureTexts.of("day.panels"), figure.handle(FigureOption.ARRAY_POWER));
        sunHours = Knob.of(FigureTexts.of("day.sun-hours"), figure.handle(FigureOption.SUN_HOURS));
        panelShare =
                Knob.of(
                        FigureTexts.of("day.arrives"),
                        figure.handle(FigureOption.ARRAY_EFFICIENCY));
        engineCurrent =
                Knob.of(
                        FigureTexts.of("day.alternator"),
                        figure.handle(FigureOption.CHARGE_CURRENT));
        engineTime = Knob.of(FigureTexts.of("day.engine"), figure.handle(FigureOption.CHARGE_TIME));
        engineShare =
                Knob.of(FigureTexts.of("day.stays"), figure.handle(FigureOption.CHARGE_EFFICIENCY));
        switches = LoadSwitch.of(figure.handle(FigureOption.LOADS));
        final Stream<Observable> moving =
                Stream.concat(all().map(Knob::stop), switches.stream().map(LoadSwitch::on));
        now = Bindings.createObjectBinding(this::shown, moving.toArray(Observable[]::new));
    }

    private Stream<Knob> all() {
        return Stream.of(
                panel,
                sunHours,
                panelShare,
                engineCurrent,
                engineTime,
                engineShare,
                voltage,
                capacity,
                share);
    }

    /** The loads in the order shown. */
    List<LoadSwitch> switches() {
        return switches;
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
        final double sun = sun();
        final double engine = engine();
        final double out = out(switches.stream().filter(each -> each.on().get()).toList());
        final double balance = balance(sun, engine, out);
        final double usable = usable();
        return new Shown(
                switches.stream().map(this::load).toList(),
                sun,
                engine,
                out,
                balance,
                usable,
                days(usable, out),
                days(usable, -balance),
                FigureTexts.of(
                        "day.capacity", "capacity", capacity.text(), "voltage", voltage.text()),
                share.text());
    }

    private Load load(final LoadSwitch load) {
        final boolean on = load.on().get();
        return new Load(load, on, on ? out(List.of(load)) : 0);
    }

    private double out(final List<LoadSwitch> on) {
        if (on.isEmpty()) {
            return 0;
        }
        final Asking asking = new Asking().with(voltage);
        on.forEach(each -> asking.with(each.load()));
        return asking.value(solver, Quantity.DAILY_ENERGY);
    }

    private double sun() {
        return new Asking()
                .with(panel)
                .with(sunHours)
                .with(panelShare)
                .value(solver, Quantity.SOLAR_ENERGY);
    }

    private double engine() {
        return new Asking()
                .with(Quantity.BANK_VOLTAGE, voltage.value())
                .with(engineCurrent)
                .with(engineTime)
                .with(engineShare)
                .value(solver, Quantity.CHARGE_ENERGY);
    }

    private double balance(final double sun, final double engine, final double out) {
        return new Asking()
                .with(Quantity.SOLAR_ENERGY, sun)
                .with(Quantity.CHARGE_ENERGY, engine)
                .with(Quantity.DAILY_ENERGY, out)
                .value(solver, Quantity.DAILY_BALANCE);
    }

    private double usable() {
        return new Asking()
                .with(Quantity.BANK_VOLTAGE, voltage.value())
                .with(capacity)
                .with(share)
                .value(solver, Quantity.USABLE_ENERGY);
    }

    private OptionalDouble days(final double usable, final double out) {
        return out <= 0
                ? OptionalDouble.empty()
                : new Asking()
                        .with(Quantity.USABLE_ENERGY, usable)
                        .with(Quantity.DAILY_ENERGY, out)
                        .find(solver, Quantity.DAYS_WITHOUT_CHARGE)
                        .value(Quantity.DAYS_WITHOUT_CHARGE);
    }
}
