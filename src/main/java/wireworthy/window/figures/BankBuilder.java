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
            return Telling.result(Quantity.SHORT_CIRCUIT_CURRENT, shortCircuit);
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
                return "above 60 V this is no longer extra-low voltage: it can kill; leave it to a"
                        + " licensed person";
            }
            if (tapped) {
                return ("never take %s off part of a %s string: that part runs flat while the rest"
                                + " is overcharged; take a converter to %s")
                        .formatted(tapVolts(), volts(), tapVolts());
            }
            return parallel == 1
                    ? volts() + ", with a fuse at the plus of the string"
                    : volts() + ", with a fuse at the plus of each string";
        }

        /** What its fuses must be able to break. */
        String fault() {
            final String blade = Telling.result(Quantity.BREAKING_CAPACITY, BLADE_BREAKS);
            final String most = "a short circuit can drive " + faultAmps() + ": ";
            return pastBlades()
                    ? most + "more than the " + blade + " a blade fuse can break"
                    : most + "a blade fuse can break " + blade;
        }

        @Override
        public String words() {
            final StringBuilder text = new StringBuilder();
            text.append(counted(parallel, "string")).append(parallel == 1 ? " of " : ", each of ");
            text.append(counted(series, "battery"))
                    .append(" in series, ")
                    .append(each)
                    .append(". ");
            rows.forEach(
                    row ->
                            text.append(
                                    "%s: %s = %s. "
                                            .formatted(
                                                    Told.capital(row.name), row.sum, row.result)));
            text.append(Told.capital(fault())).append(" (ISO 8820-3). ");
            text.append(sound() ? "Sound: " : "Unsound: ").append(verdict()).append(". ");
            return text.append(CAUTION).toString();
        }

        private static String counted(final int number, final String what) {
            final String many = what.equals("battery") ? "batteries" : what + "s";
            return number == 1 ? "1 " + what : number + " " + many;
        }
    }

    /** What holds for every bank. */
    static final String CAUTION =
            "All batteries of one type, one age and one capacity. A lithium bank is work for a"
                    + " qualified person.";

    BankBuilder(final Figure figure, final Solver solver) {
        this.solver = solver;
        voltage = Knob.of("voltage of one battery", figure.handle(FigureOption.BATTERY_VOLTAGE));
        capacity = Knob.of("capacity of one", figure.handle(FigureOption.BATTERY_CAPACITY));
        series = Knob.of("in series", figure.handle(FigureOption.IN_SERIES));
        parallel = Knob.of("strings in parallel", figure.handle(FigureOption.IN_PARALLEL));
        share = Knob.of("usable share", figure.handle(FigureOption.USABLE_SHARE));
        resistance = Knob.of("resistance of one", figure.handle(FigureOption.BATTERY_RESISTANCE));
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
                "each " + voltage.text() + ", " + capacity.text(),
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
                                row(worked, "inner resistance", Quantity.INTERNAL_RESISTANCE),
                                row(worked, "short circuit", Quantity.SHORT_CIRCUIT_CURRENT))
                        .toList());
    }

    private static Row row(final Worked worked, final String name, final Quantity quantity) {
        final String numbers =
                Telling.lines(worked).stream()
                        .filter(line -> line.ref().equals(Ref.circuit(quantity)))
                        .map(line -> line.numbers())
                        .findFirst()
                        .orElseThrow();
        return new Row(
                name,
                numbers.substring(0, numbers.lastIndexOf(" = ")),
                Telling.result(quantity, worked.value(quantity).orElseThrow()));
    }
}
