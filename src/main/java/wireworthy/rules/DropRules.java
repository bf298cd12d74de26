package wireworthy.rules;

import static wireworthy.rules.Quantity.*;
import static wireworthy.rules.Skill.*;

import java.util.List;

/**
 * What the cable takes: drop, percent, volts left, heat; and the lengths and sections a limit
 * allows.
 */
final class DropRules {
    private static final double MM2 = 1e-6;

    private DropRules() {}

    static List<Direction> directions() {
        final Topic topic = new Topic();
        drop(topic);
        percent(topic);
        left(topic);
        limit(topic);
        section(topic);
        longest(topic);
        return topic.directions();
    }

    private static void drop(final Topic topic) {
        topic.rule("drop", Skill.DROP)
                .gives(
                        Quantity.DROP,
                        "{circuit-current} × {loop-resistance}",
                        (x, s) -> x[0] * x[1])
                .slip(
                        "remaining-for-drop",
                        "{supply-voltage} − {circuit-current} × {loop-resistance}",
                        (x, s) -> x[0] - x[1] * x[2])
                .skips("current-left-out", "{loop-resistance}")
                .slip(
                        "current-squared",
                        "{circuit-current}² × {loop-resistance}",
                        (x, s) -> x[0] * x[0] * x[1])
                .gives(CIRCUIT_CURRENT, "{drop} ÷ {loop-resistance}", (x, s) -> x[0] / x[1])
                .backward()
                .gives(LOOP_RESISTANCE, "{drop} ÷ {circuit-current}", (x, s) -> x[0] / x[1])
                .backward()
                .rule("power-lost", Skill.POWER_LOST)
                .gives(
                        Quantity.POWER_LOST,
                        "{circuit-current}² × {loop-resistance}",
                        (x, s) -> x[0] * x[0] * x[1])
                .slip(
                        "loss-current-not-squared",
                        "{circuit-current} × {loop-resistance}",
                        (x, s) -> x[0] * x[1])
                .slip(
                        "loss-from-full-supply",
                        "{supply-voltage} × {circuit-current}",
                        (x, s) -> x[0] * x[1])
                .slip(
                        "loss-from-full-supply",
                        "{supply-voltage}² ÷ {loop-resistance}",
                        (x, s) -> x[0] * x[0] / x[1])
                .gives(Quantity.POWER_LOST, "{drop} × {circuit-current}", (x, s) -> x[0] * x[1])
                .slip(
                        "loss-from-full-supply",
                        "{supply-voltage} × {circuit-current}",
                        (x, s) -> x[0] * x[1])
                .gives(
                        LOOP_RESISTANCE,
                        "{power-lost} ÷ {circuit-current}²",
                        (x, s) -> x[0] / x[1] / x[1])
                .backward()
                .gives(Quantity.DROP, "{power-lost} ÷ {circuit-current}", (x, s) -> x[0] / x[1])
                .backward();
    }

    private static void percent(final Topic topic) {
        topic.rule("drop-percent", DROP_IN_PERCENT)
                .gives(DROP_PERCENT, "{drop} ÷ {supply-voltage} × 100", (x, s) -> x[0] / x[1])
                .slip(
                        "load-voltage-base",
                        "{drop} ÷ ({supply-voltage} − {drop}) × 100",
                        (x, s) -> x[0] / (x[1] - x[0]))
                .slip("mains-base", "{drop} ÷ 230 × 100", (x, s) -> x[0] / 230)
                .slip(
                        "fraction-for-percent",
                        "{drop} ÷ {supply-voltage}",
                        (x, s) -> x[0] / x[1] / 100)
                .slip(
                        "percent-upside-down",
                        "{supply-voltage} ÷ {drop} × 100",
                        (x, s) -> x[0] / x[1])
                .gives(Quantity.DROP, "{drop-percent} × {supply-voltage}", (x, s) -> x[0] * x[1])
                .backward()
                .slip(
                        "percent-not-divided",
                        "{drop-percent} × {supply-voltage} × 100",
                        (x, s) -> x[0] * x[1] * 100)
                .slip(
                        "divided-for-product",
                        "{supply-voltage} ÷ ({drop-percent} × 100)",
                        (x, s) -> x[0] / (x[1] * 100))
                .gives(SUPPLY_VOLTAGE, "{drop} ÷ {drop-percent}", (x, s) -> x[0] / x[1])
                .backward();
    }

    private static void left(final Topic topic) {
        topic.rule("voltage-at-load", VOLTAGE_AT_THE_LOAD)
                .gives(VOLTAGE_AT_LOAD, "{supply-voltage} − {drop}", (x, s) -> x[0] - x[1])
                .unless(START_MULTIPLE)
                .answers("drop-for-remaining", "{drop}")
                .slip("drop-added", "{supply-voltage} + {drop}", (x, s) -> x[0] + x[1])
                .gives(
                        VOLTAGE_AT_LOAD,
                        "{supply-voltage} − {start-current} × {loop-resistance}",
                        (x, s) -> x[0] - x[1] * x[2])
                .forward()
                .cost(0.9)
                .slip(
                        "start-current-ignored",
                        "{supply-voltage} − {circuit-current} × {loop-resistance}",
                        (x, s) -> x[0] - x[1] * x[2])
                .slip(
                        "drop-for-remaining",
                        "{start-current} × {loop-resistance}",
                        (x, s) -> x[0] * x[1])
                .slip(
                        "drop-added",
                        "{supply-voltage} + {start-current} × {loop-resistance}",
                        (x, s) -> x[0] + x[1] * x[2])
                .gives(Quantity.DROP, "{supply-voltage} − {voltage-at-load}", (x, s) -> x[0] - x[1])
                .unless(START_MULTIPLE)
                .gives(SUPPLY_VOLTAGE, "{voltage-at-load} + {drop}", (x, s) -> x[0] + x[1])
                .unless(START_MULTIPLE);
    }

    private static void limit(final Topic topic) {
        topic.rule("drop-limit", SECTION_FOR_A_DROP_LIMIT)
                .gives(DROP_LIMIT, "{drop-limit-share} × {supply-voltage}", (x, s) -> x[0] * x[1])
                .forward();
    }

    private static void section(final Topic topic) {
        topic.rule("section-for-drop", SECTION_FOR_A_DROP_LIMIT)
                .gives(
                        SECTION_FOR_DROP,
                        "{resistivity} × {loop-length} × {circuit-current} ÷ {drop-limit}",
                        (x, s) -> x[0] * x[1] * x[2] / x[3])
                .forward()
                .slip(
                        "percent-as-volts",
                        "{resistivity} × {loop-length} × {circuit-current}"
                                + " ÷ ({drop-limit-share} × 100)",
                        (x, s) -> x[0] * x[1] * x[2] / (x[3] * 100))
                .slip(
                        "percent-not-divided",
                        "{resistivity} × {loop-length} × {circuit-current}"
                                + " ÷ ({drop-limit-share} × 100 × {supply-voltage})",
                        (x, s) -> x[0] * x[1] * x[2] / (x[3] * 100 * x[4]))
                .slip(
                        "section-upside-down",
                        "{drop-limit} ÷ ({resistivity} × {loop-length} × {circuit-current})",
                        (x, s) -> x[0] / (x[1] / MM2 * x[2] * x[3]) * MM2)
                .slip(
                        "limit-multiplied",
                        "{resistivity} × {loop-length} × {circuit-current} × {drop-limit}",
                        (x, s) -> x[0] * x[1] * x[2] * x[3])
                .slip(
                        "higher-voltage-halves",
                        "half the section of {supply-voltage} ÷ 2:"
                                + " 2 × {resistivity} × {loop-length} × {circuit-current}"
                                + " ÷ {drop-limit}",
                        (x, s) -> halves(x[0], s) ? 2 * x[1] * x[2] * x[3] / x[4] : Double.NaN);
    }

    /**
     * A load of known watts with a limit in per cent: doubling the voltage quarters the section.
     */
    private static boolean halves(final double volts, final Setting s) {
        return Voltages.nominal(volts) > 12 && s.gave(LOAD_POWER) && !s.gave(DROP_LIMIT);
    }

    private static void longest(final Topic topic) {
        topic.rule("longest-run", SECTION_FOR_A_DROP_LIMIT)
                .gives(
                        LONGEST_RUN,
                        "{drop-limit} × {section} ÷ (2 × {resistivity} × {circuit-current})",
                        (x, s) -> x[0] * x[1] / (2 * x[2] * x[3]))
                .where(s -> !s.chassis())
                .unless(RESISTANCE_PER_LENGTH)
                .forward()
                .slip(
                        "longest-run-not-halved",
                        "{drop-limit} × {section} ÷ ({resistivity} × {circuit-current})",
                        (x, s) -> x[0] * x[1] / (x[2] * x[3]))
                .gives(
                        LONGEST_RUN,
                        "{drop-limit} × {section} ÷ ({resistivity} × {circuit-current})",
                        (x, s) -> x[0] * x[1] / (x[2] * x[3]))
                .where(Setting::chassis)
                .unless(RESISTANCE_PER_LENGTH)
                .forward()
                .gives(
                        LONGEST_RUN,
                        "{drop-limit} ÷ (2 × {resistance-per-length} ÷ 1000 × {circuit-current})",
                        (x, s) -> x[0] / (2 * x[1] * x[2]))
                .where(s -> !s.chassis())
                .when(RESISTANCE_PER_LENGTH)
                .forward()
                .slip(
                        "longest-run-not-halved",
                        "{drop-limit} ÷ ({resistance-per-length} ÷ 1000 × {circuit-current})",
                        (x, s) -> x[0] / (x[1] * x[2]))
                .gives(
                        LONGEST_RUN,
                        "{drop-limit} ÷ ({resistance-per-length} ÷ 1000 × {circuit-current})",
                        (x, s) -> x[0] / (x[1] * x[2]))
                .where(Setting::chassis)
                .when(RESISTANCE_PER_LENGTH)
                .forward();
    }
}
