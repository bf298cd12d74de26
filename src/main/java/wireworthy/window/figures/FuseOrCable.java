package wireworthy.window.figures;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.Observable;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.ObjectBinding;
import wireworthy.facts.FuseTimes;
import wireworthy.lessons.Figure;
import wireworthy.lessons.FigureOption;
import wireworthy.lessons.Handle;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.window.parts.Verdict;
import wireworthy.working.Caution;
import wireworthy.working.Line;
import wireworthy.working.Solver;
import wireworthy.working.Telling;
import wireworthy.working.Worked;

/**
 * A short circuit at the end of a cable: the limits of time in which the fuse opens, against the
 * time the cable takes to heat to the end of what its insulation bears.
 */
final class FuseOrCable implements FigureModel<FuseOrCable.Shown> {
    /** Times nearer to each other than this are too near to tell which is first. */
    private static final double ORDER_OF_MAGNITUDE = 10;

    /** Seconds; past this a cable gives heat away and the adiabatic sum no longer holds. */
    static final double LONGEST_ADIABATIC = 5;

    private static final String UNKNOWN = "breaking-capacity-unknown";
    private static final Set<String> ABOUT_THE_FUSE =
            Set.of("fuse-above-cable", "fuse-voltage-low", "breaking-capacity-low", UNKNOWN);

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
    private final ObjectBinding<Shown> now;

    /** Which comes first, as far as it can be told. */
    enum First {
        FUSE(Verdict.SOUND),
        CABLE(Verdict.UNSOUND),
        /** The fuse need not open at this current at all. */
        NEVER(Verdict.UNSOUND),
        TOO_NEAR(Verdict.CAUTION),
        /** The cable takes longer than its sum holds, and the fuse may take as long. */
        BEYOND(Verdict.CAUTION);

        private final Verdict verdict;

        First(final Verdict verdict) {
            this.verdict = verdict;
        }
    }

    /**
     * What is drawn. Amps and seconds.
     *
     * @param limits the fuse's limits of time, by rising share of its rating
     * @param heat A²s, what heats the cable to the end of what its insulation bears
     * @param current what the short circuit drives
     * @param shortest in which the fuse may open; empty past the last limit
     * @param longest in which the fuse opens; empty where it need not
     * @param cable in which the cable gets too hot; empty past what the sum holds for
     * @param heating the line of the working that gives that time, or why there is none
     * @param dangers of this fuse in this circuit, worst first
     */
    record Shown(
            double fuse,
            String cableName,
            List<FuseTimes.Row> limits,
            double heat,
            double current,
            OptionalDouble shortest,
            OptionalDouble longest,
            OptionalDouble cable,
            String heating,
            List<Caution> dangers)
            implements Told {
        public Shown {
            limits = List.copyOf(limits);
            dangers = List.copyOf(dangers);
        }

        First first() {
            if (longest.isEmpty()) {
                return First.NEVER;
            }
            if (cable.isPresent() && cable.getAsDouble() <= longest.getAsDouble()) {
                return First.CABLE;
            }
            if (cable.orElse(LONGEST_ADIABATIC) >= ORDER_OF_MAGNITUDE * longest.getAsDouble()) {
                return First.FUSE;
            }
            return cable.isEmpty() ? First.BEYOND : First.TOO_NEAR;
        }

        Verdict verdict() {
            if (dangers.stream().anyMatch(danger -> !danger.id().equals(UNKNOWN))) {
                return Verdict.UNSOUND;
            }
            final Verdict order = first().verdict;
            return order == Verdict.SOUND && !dangers.isEmpty() ? Verdict.CAUTION : order;
        }

        String fuseAmps() {
            return Telling.result(Quantity.FUSE, fuse);
        }

        String amps() {
            return Telling.result(Quantity.SHORT_CIRCUIT_CURRENT, current);
        }

        /** How long the fuse takes, in words. */
        String fuseTime() {
            if (longest.isEmpty()) {
                return "need not open";
            }
            final String most = "at most " + seconds(longest.getAsDouble());
            return shortest.isEmpty()
                    ? most
                    : seconds(shortest.getAsDouble()) + " to " + seconds(longest.getAsDouble());
        }

        /** How long the cable takes, in words. */
        String cableTime() {
            return cable.isEmpty() ? "more than 5 s" : "about " + roughly(cable.getAsDouble());
        }

        /** Which is first, in a line. */
        String order() {
            return switch (first()) {
                case FUSE -> "the fuse opens first, by a factor of ten or more";
                case CABLE -> "the cable can be too hot before the fuse opens";
                case NEVER ->
                        "so little more than its rating need not open this fuse: the fault goes on"
                                + " heating the cable";
                case TOO_NEAR -> "too near to tell which is first: less than a factor of ten";
                case BEYOND ->
                        "no telling: past 5 s the cable gives heat away, and this sum no longer"
                                + " holds";
            };
        }

        /** What comes of it: the dangers first, then the order. */
        String says() {
            if (dangers.isEmpty()) {
                return order();
            }
            return dangers.stream().map(Caution::text).collect(Collectors.joining(" "))
                    + " "
                    + Told.capital(order())
                    + ".";
        }

        @Override
        public String words() {
            return ("The short circuit drives %s. The fuse of %s: %s (ISO 8820-3, from memory,"
                            + " unconfirmed). The cable, %s: %s until its insulation is too hot"
                            + " (IEC 60364-4-43 and 60949, for times below 5 s): %s. An order of"
                            + " magnitude only. %s.")
                    .formatted(
                            amps(),
                            fuseAmps(),
                            fuseTime(),
                            cableName,
                            cableTime(),
                            heating,
                            Told.capital(says()));
        }

        static String seconds(final double time) {
            return Telling.result(Quantity.ADIABATIC_TIME, time);
        }

        private static String roughly(final double time) {
            return FigureText.of(time, Dimension.SHORT_TIME, 1);
        }
    }

    FuseOrCable(final Figure figure, final Solver solver) {
        this.solver = solver;
        fuse = Knob.of("fuse", figure.handle(FigureOption.FUSE));
        section = Knob.of("section", figure.handle(FigureOption.SECTION));
        insulation = Knob.of("insulation for", figure.handle(FigureOption.INSULATION_TEMPERATURE));
        voltage = Knob.of("supply voltage", figure.handle(FigureOption.SUPPLY_VOLTAGE));
        resistance = Knob.of("resistance inside", figure.handle(FigureOption.INTERNAL_RESISTANCE));
        length = Knob.of("length one way", figure.handle(FigureOption.ONE_WAY_LENGTH));
        resistivity = Knob.of("resistivity", figure.handle(FigureOption.RESISTIVITY));
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
    public ObjectBinding<Shown> now() {
        return now;
    }

    private Shown shown() {
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
        return new Shown(
                fuse.value(),
                section.text() + " for " + insulation.text(),
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
            return "past them it gives heat away and the sum no longer holds";
        }
        return Telling.lines(worked).stream()
                .filter(line -> line.ref().equals(Ref.circuit(Quantity.ADIABATIC_TIME)))
                .map(Line::numbers)
                .findFirst()
                .orElseThrow();
    }

    /** Of the cautions those about this fuse: its rating, its voltage, what it can break. */
    private List<Caution> dangers(final Asking asking) {
        return asking.cautions(solver, Quantity.FUSE).stream()
                .filter(caution -> ABOUT_THE_FUSE.contains(caution.id()))
                .toList();
    }
}
