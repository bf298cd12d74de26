package wireworthy.rules;

import static wireworthy.rules.Quantity.*;
import static wireworthy.rules.Skill.*;

import java.util.List;
import wireworthy.facts.FuseTimes;
import wireworthy.facts.Provenance;
import wireworthy.facts.Source;
import wireworthy.texts.TextBundle;

/** The source with its inner resistance, short circuits and how fast a conductor heats. */
final class ProtectionRules {
    private static final TextBundle REFUSALS = new TextBundle("refusals");

    private static final double LONGEST_ADIABATIC = 5;
    private static final double FINAL_TEMPERATURE = 160;
    private static final double PER_MM2 = 1e6;

    private ProtectionRules() {}

    static List<Direction> directions() {
        final Topic topic = new Topic();
        source(topic);
        shortCircuit(topic);
        heating(topic);
        opening(topic);
        return topic.directions();
    }

    private static void source(final Topic topic) {
        topic.rule("inner-resistance", SHORT_CIRCUIT_AND_PROTECTION)
                .gives(
                        CIRCUIT_CURRENT,
                        "{supply-voltage} ÷ ({internal-resistance} + {resistance})",
                        (x, s) -> x[0] / (x[1] + x[2]))
                .when(INTERNAL_RESISTANCE, RESISTANCE)
                .unless(LOADS, RETURN)
                .gives(
                        TERMINAL_VOLTAGE,
                        "{supply-voltage} − {circuit-current} × {internal-resistance}",
                        (x, s) -> x[0] - x[1] * x[2])
                .unless(CHARGE_CURRENT)
                .gives(
                        INTERNAL_RESISTANCE,
                        "({supply-voltage} − {terminal-voltage}) ÷ {circuit-current}",
                        (x, s) -> (x[0] - x[1]) / x[2])
                .unless(CHARGE_CURRENT)
                .slip(
                        "multiplied-for-quotient",
                        "({supply-voltage} − {terminal-voltage}) × {circuit-current}",
                        (x, s) -> (x[0] - x[1]) * x[2])
                .slip(
                        "quotient-turned-over",
                        "{circuit-current} ÷ ({supply-voltage} − {terminal-voltage})",
                        (x, s) -> x[0] / (x[1] - x[2]))
                .gives(
                        CIRCUIT_CURRENT,
                        "({supply-voltage} − {terminal-voltage}) ÷ {internal-resistance}",
                        (x, s) -> (x[0] - x[1]) / x[2])
                .unless(CHARGE_CURRENT)
                .backward()
                .gives(
                        SUPPLY_VOLTAGE,
                        "{terminal-voltage} + {circuit-current} × {internal-resistance}",
                        (x, s) -> x[0] + x[1] * x[2])
                .unless(CHARGE_CURRENT)
                .rule("inner-resistance-charging", SHORT_CIRCUIT_AND_PROTECTION)
                .gives(
                        TERMINAL_VOLTAGE,
                        "{supply-voltage} + {charge-current} × {internal-resistance}",
                        (x, s) -> x[0] + x[1] * x[2])
                .when(CHARGE_CURRENT)
                .gives(
                        INTERNAL_RESISTANCE,
                        "({terminal-voltage} − {supply-voltage}) ÷ {charge-current}",
                        (x, s) -> (x[0] - x[1]) / x[2])
                .when(CHARGE_CURRENT);
    }

    private static void shortCircuit(final Topic topic) {
        topic.rule("short-circuit", SHORT_CIRCUIT_AND_PROTECTION)
                .gives(
                        SHORT_CIRCUIT_CURRENT,
                        "{supply-voltage} ÷ ({internal-resistance} + {loop-resistance})",
                        (x, s) -> x[0] / (x[1] + x[2]))
                .where(ProtectionRules::cableGiven)
                .forward()
                .slip(
                        "short-circuit-without-loop",
                        "{supply-voltage} ÷ {internal-resistance}",
                        (x, s) -> x[0] / x[1])
                .gives(
                        SHORT_CIRCUIT_CURRENT,
                        "{supply-voltage} ÷ {internal-resistance}",
                        (x, s) -> x[0] / x[1])
                .where(s -> !cableGiven(s))
                .forward()
                .slip(
                        "ohm-upside-down",
                        "{internal-resistance} ÷ {supply-voltage}",
                        (x, s) -> x[0] / x[1])
                .slip(
                        "ohm-multiplied",
                        "{supply-voltage} × {internal-resistance}",
                        (x, s) -> x[0] * x[1])
                .gives(
                        INTERNAL_RESISTANCE,
                        "{supply-voltage} ÷ {short-circuit-current}",
                        (x, s) -> x[0] / x[1])
                .where(s -> !cableGiven(s))
                .backward();
    }

    private static boolean cableGiven(final Setting s) {
        return s.gave(LOOP_RESISTANCE) || s.gave(ONE_WAY_LENGTH) || s.gave(LOOP_LENGTH);
    }

    private static void heating(final Topic topic) {
        topic.rule("heating-constant", SHORT_CIRCUIT_AND_PROTECTION)
                .gives(
                        ADIABATIC_K,
                        "226 × √(ln(1 + (160 − {insulation-temperature})"
                                + " ÷ (234.5 + {insulation-temperature})))",
                        (x, s) -> heatingConstant(x[0]))
                .forward()
                .from(
                        s ->
                                new Source(
                                        "IEC 60949, final temperature 160 °C of PVC",
                                        Provenance.MEMORY))
                .refuses(
                        (x, s) ->
                                new Refusal(
                                        "given.insulation-temperature",
                                        REFUSALS.of("no-heating-constant")))
                .rule("adiabatic-time", SHORT_CIRCUIT_AND_PROTECTION)
                .gives(
                        ADIABATIC_TIME,
                        "{adiabatic-k}² × {section}² ÷ {short-circuit-current}²",
                        (x, s) -> withinFive(square(x[0] * x[1] / x[2])))
                .forward()
                .refuses(
                        (x, s) ->
                                new Refusal(
                                        "given.short-circuit-current",
                                        REFUSALS.of("past-five-seconds")));
    }

    private static void opening(final Topic topic) {
        topic.rule("fuse-opening", SHORT_CIRCUIT_AND_PROTECTION)
                .gives(
                        FUSE_TIME_SHORTEST,
                        "shortest time of a fuse of {fuse} at {short-circuit-current}",
                        (x, s) -> times(s).shortest(x[1] / x[0]).orElse(Double.NaN))
                .forward()
                .from(s -> times(s).source())
                .refuses((x, s) -> untimed(s, "table-ends-below"))
                .gives(
                        FUSE_TIME_LONGEST,
                        "longest time of a fuse of {fuse} at {short-circuit-current}",
                        (x, s) -> times(s).longest(x[1] / x[0]).orElse(Double.NaN))
                .forward()
                .from(s -> times(s).source())
                .refuses((x, s) -> untimed(s, "no-longest-time"));
    }

    private static FuseTimes times(final Setting s) {
        return FuseTimes.of(s.series().id());
    }

    private static Refusal untimed(final Setting s, final String why) {
        return times(s).rows().isEmpty()
                ? new Refusal(
                        "given.fuse-series", REFUSALS.of("no-times", "series", s.series().words()))
                : new Refusal("given.short-circuit-current", REFUSALS.of(why));
    }

    /** A s^0.5/m2, copper, by IEC 60949 (from memory, unconfirmed); NaN from 160 degC. */
    private static double heatingConstant(final double start) {
        return start >= FINAL_TEMPERATURE
                ? Double.NaN
                : 226
                        * Math.sqrt(Math.log(1 + (FINAL_TEMPERATURE - start) / (234.5 + start)))
                        * PER_MM2;
    }

    private static double square(final double x) {
        return x * x;
    }

    private static double withinFive(final double seconds) {
        return seconds <= LONGEST_ADIABATIC ? seconds : Double.NaN;
    }
}
