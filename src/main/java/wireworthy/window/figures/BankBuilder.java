package wireworthy.window.figures;

import java.util.List;
import java.util.stream.Stream;
import javafx.beans.Observable;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.ObjectBinding;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import wireworthy.facts.FuseSeriesTable;
import wireworthy.lessons.Figure;
import wireworthy.lessons.FigureOption;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.working.Solver;
import wireworthy.working.Telling;
import wireworthy.working.Worked;

/** A bank of equal batteries: strings of some in series, the strings side by side. */
final class BankBuilder implements FigureModel<BankBuilder.Shown> {
    private static final String EQUALS = " = ";
    private static final String TOO_HIGH = "not-extra-low-voltage";
    private static final double BLADE_BREAKS =
            FuseSeriesTable.named("blade").breakingCapacity().orElseThrow();

    private final Solver solver;
    private final Knob voltage;
    private final Knob capacity;
    private final Knob series;
    private final Knob parallel;
    private final Knob share;
    private final Knob resistance;
    private final BooleanProperty tap = new SimpleBooleanProperty();
    private final ObjectBinding<Shown> now;

    /** A figure of the bank: its name, the sum it comes from and what it comes to. */
    record Row(String name, String sum, String result) {}

    /**
     * What is drawn.
     *
     * @param batteryVolts V of one battery
     * @param each a battery in words
     * @param tapped whether something is taken off the first battery of a string
     * @param bankVolts V
     * @param extraLow whether that is still extra-low voltage
     * @param shortCircuit A, what the bank drives through a short circuit at its terminals
     * @param rows the figures of the bank, in working order
     */
    record Shown(
            int series,
            int parallel,
            double batteryVolts,
            String each,
            boolean tapped,
            double bankVolts,
            boolean extraLow,
            double shortCircuit,
            List<Row> rows)
            implements Told {
        public Shown {
            rows = List.copyOf(rows);
        }

        String volts() {
            return Telling.result(Quantity.BANK_VOLTAGE, bankVolts);
        }

        String tapVolts() {
            return Telling.result(Quantity.BATTERY_VOLTAGE, batteryVolts);
        }

        String faultAmps() {
            return Telling.exact(Quantity.SHORT_CIRCUIT_CURRENT, shortCircuit);
        }

        /** Whether a blade fuse can't break what the bank drives. */
        boolean pastBlades() {
            return shortCircuit > BLADE_BREAKS;
        }

        boolean sound() {
            return !tapped && extraLow;
        }

        /** What comes of it, in a line. */
        String verdict() {
            if (!extraLow) {
                return FigureTexts.of("bank.too-high");
            }
            if (tapped) {
                return FigureTexts.of("bank.tapped", "tap", tapVolts(), "volts", volts());
            }
            return FigureTexts.of(parallel == 1 ? "bank.fuse" : "bank.fuses", "volts", volts());
        }

        /** What its fuses must be able to break. */
        String fault() {
            final String blade = Telling.result(Quantity.BREAKING_CAPACITY, BLADE_BREAKS);
            return FigureTexts.of(
                    pastBlades() ? "bank.past-blades" : "bank.blades",
                    "amps",
                    faultAmps(),
                    "blade",
                    blade);
        }

        @Override
        public String words() {
            final StringBuilder text = new StringBuilder();
            text.append(
                    FigureTexts.of(
                            parallel == 1 ? "bank.made" : "bank.made.strings",
                            "strings",
                            parallel,
                            "batteries",
                            batteries(),
                            "each",
                            each));
            text.append(' ');
            rows.forEach(
                    row ->
                            text.append(
                                    "%s: %s = %s. "
                                            .formatted(
                                                    Told.capital(row.name), row.sum, row.result)));
            text.append(FigureTexts.of("bank.source", "fault", Told.capital(fault())));
            text.append(' ');
            text.append(FigureTexts.of(sound() ? "sound" : "unsound", "verdict", verdict()));
            text.append(' ');
            return text.append(caution()).toString();
        }

        private String batteries() {
            return FigureTexts.of(series == 1 ? "bank.battery" : "bank.batteries", "count", series);
        }
    }

    /** What holds for every bank. */
    static String caution() {
        return FigureTexts.of("bank.caution");
    }

    BankBuilder(final Figure figure, final Solver solver) {
        this.solver = solver;
        voltage =
                Knob.of(
                        FigureTexts.of("bank.voltage"),
                        figure.handle(FigureOption.BATTERY_VOLTAGE));
        capacity =
                Knob.of(
                        FigureTexts.of("bank.capacity"),
                        figure.handle(FigureOption.BATTERY_CAPACITY));
        series = Knob.of(FigureTexts.of("bank.series"), figure.handle(FigureOption.IN_SERIES));
        parallel =
                Knob.of(FigureTexts.of("bank.parallel"), figure.handle(FigureOption.IN_PARALLEL));
        share = Knob.of(FigureTexts.of("usable-share"), figure.handle(FigureOption.USABLE_SHARE));
        resistance =
                Knob.of(
                        FigureTexts.of("bank.resistance"),
                        figure.handle(FigureOption.BATTERY_RESISTANCE));
        final Stream<Observable> moving =
                Stream.concat(all().map(Knob::stop), Stream.of((Observable) tap));
        now = Bindings.createObjectBinding(this::shown, moving.toArray(Observable[]::new));
    }

    private Stream<Knob> all() {
        return Stream.of(series, parallel, voltage, capacity, share, resistance);
    }

    /** Whether something is taken off the first battery of a string. */
    BooleanProperty tap() {
        return tap;
    }

    /** The most batteries a string can have. */
    int longest() {
        return (int) series.greatest();
    }

    /** The most strings there can be. */
    int mostStrings() {
        return (int) parallel.greatest();
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
                asking.find(
                        solver,
                        Quantity.BANK_VOLTAGE,
                        Quantity.BANK_CAPACITY,
                        Quantity.BANK_ENERGY,
                        Quantity.USABLE_ENERGY,
                        Quantity.INTERNAL_RESISTANCE,
                        Quantity.SHORT_CIRCUIT_CURRENT);
        return new Shown(
                (int) Math.round(series.value()),
                (int) Math.round(parallel.value()),
                voltage.value(),
                FigureTexts.of("bank.each", "voltage", voltage.text(), "capacity", capacity.text()),
                tap.get() && series.value() > 1,
                worked.value(Quantity.BANK_VOLTAGE).orElseThrow(),
                asking.cautions(solver, Quantity.BANK_VOLTAGE).stream()
                        .noneMatch(caution -> caution.id().equals(TOO_HIGH)),
                worked.value(Quantity.SHORT_CIRCUIT_CURRENT).orElseThrow(),
                Stream.of(
                                row(worked, "voltage", Quantity.BANK_VOLTAGE),
                                row(worked, "capacity", Quantity.BANK_CAPACITY),
                                row(worked, "energy", Quantity.BANK_ENERGY),
                                row(worked, "usable", Quantity.USABLE_ENERGY),
                                row(worked, "resistance", Quantity.INTERNAL_RESISTANCE),
                                row(worked, "short-circuit", Quantity.SHORT_CIRCUIT_CURRENT))
                        .toList());
    }

    /** As in the working, so that the next sum takes what this one comes to. */
    private static Row row(final Worked worked, final String name, final Quantity quantity) {
        final String numbers =
                Telling.lines(worked).stream()
                        .filter(line -> line.ref().equals(Ref.circuit(quantity)))
                        .map(line -> line.numbers())
                        .findFirst()
                        .orElseThrow();
        final int equals = numbers.lastIndexOf(EQUALS);
        return new Row(
                FigureTexts.of("bank.row." + name),
                numbers.substring(0, equals),
                numbers.substring(equals + EQUALS.length()));
    }
}
