package wireworthy.window.figures;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import wireworthy.facts.FuseTimes;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.window.parts.Verdict;
import wireworthy.working.Caution;
import wireworthy.working.Telling;

/**
 * A short circuit, the fuse before it and the cable it runs through. Amps and seconds.
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
record Fault(
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
    /** Of the dangers, the one that is only not known. */
    static final String UNKNOWN = "breaking-capacity-unknown";

    /** Seconds; past this a cable gives heat away and the adiabatic sum no longer holds. */
    static final double LONGEST_ADIABATIC = 5;

    /** Times nearer to each other than this are too near to tell which is first. */
    private static final double ORDER_OF_MAGNITUDE = 10;

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

    public Fault {
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
        return Telling.exact(Quantity.SHORT_CIRCUIT_CURRENT, current);
    }

    /** How long the fuse takes, in words. */
    String fuseTime() {
        if (longest.isEmpty()) {
            return FigureTexts.of("fault.never-opens");
        }
        final String most = seconds(longest.getAsDouble());
        return shortest.isEmpty()
                ? FigureTexts.of("fault.at-most", "time", most)
                : FigureTexts.of(
                        "fault.from-to", "from", seconds(shortest.getAsDouble()), "to", most);
    }

    /** How long the cable takes, in words. */
    String cableTime() {
        return cable.isEmpty()
                ? FigureTexts.of("fault.past")
                : FigureTexts.of("fault.about", "time", roughly(cable.getAsDouble()));
    }

    /** Which is first, in a line. */
    String order() {
        return FigureTexts.of(
                "fault.first." + first().name().toLowerCase(Locale.ROOT).replace('_', '-'));
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
        return FigureTexts.of(
                "fault.words",
                "amps",
                amps(),
                "fuse",
                fuseAmps(),
                "fuse-time",
                fuseTime(),
                "cable",
                cableName,
                "cable-time",
                cableTime(),
                "heating",
                heating,
                "says",
                Told.capital(says()));
    }

    static String seconds(final double time) {
        return Telling.result(Quantity.ADIABATIC_TIME, time);
    }

    private static String roughly(final double time) {
        return FigureText.of(time, Dimension.SHORT_TIME, 1);
    }
}
