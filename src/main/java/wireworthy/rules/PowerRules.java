package wireworthy.rules;

import static wireworthy.rules.Quantity.*;
import static wireworthy.rules.Skill.*;

import java.util.List;

/** Power, voltage, current and resistance of one element, one load and a load on a converter. */
final class PowerRules {
    private static final double HOUR = 3600;

    private PowerRules() {}

    static List<Direction> directions() {
        final Topic topic = new Topic();
        element(topic);
        load(topic);
        converter(topic);
        amount(topic);
        return topic.directions();
    }

    private static void element(final Topic topic) {
        topic.rule("ohms-law", CURRENT_FROM_POWER)
                .gives(CURRENT, "{voltage} ÷ {resistance}", (x, s) -> x[0] / x[1])
                .slip("ohm-upside-down", "{resistance} ÷ {voltage}", (x, s) -> x[0] / x[1])
                .slip("ohm-multiplied", "{voltage} × {resistance}", (x, s) -> x[0] * x[1])
                .gives(VOLTAGE, "{current} × {resistance}", (x, s) -> x[0] * x[1])
                .slip("divided-for-product", "{current} ÷ {resistance}", (x, s) -> x[0] / x[1])
                .slip("divided-for-product", "{resistance} ÷ {current}", (x, s) -> x[0] / x[1])
                .gives(RESISTANCE, "{voltage} ÷ {current}", (x, s) -> x[0] / x[1])
                .slip("multiplied-for-quotient", "{voltage} × {current}", (x, s) -> x[0] * x[1])
                .slip("quotient-turned-over", "{current} ÷ {voltage}", (x, s) -> x[0] / x[1])
                .rule("power-law", CURRENT_FROM_POWER)
                .gives(POWER, "{voltage} × {current}", (x, s) -> x[0] * x[1])
                .slip("divided-for-product", "{voltage} ÷ {current}", (x, s) -> x[0] / x[1])
                .slip("divided-for-product", "{current} ÷ {voltage}", (x, s) -> x[0] / x[1])
                .gives(CURRENT, "{power} ÷ {voltage}", (x, s) -> x[0] / x[1])
                .slip("power-times-volts", "{power} × {voltage}", (x, s) -> x[0] * x[1])
                .slip("volts-over-power", "{voltage} ÷ {power}", (x, s) -> x[0] / x[1])
                .skips("watts-as-amps", "{power}")
                .slip("voltage-squared", "{power} ÷ {voltage}²", (x, s) -> x[0] / x[1] / x[1])
                .gives(VOLTAGE, "{power} ÷ {current}", (x, s) -> x[0] / x[1])
                .rule("heating-law", CURRENT_FROM_POWER)
                .gives(POWER, "{current}² × {resistance}", (x, s) -> x[0] * x[0] * x[1])
                .gives(CURRENT, "√({power} ÷ {resistance})", (x, s) -> Math.sqrt(x[0] / x[1]))
                .gives(RESISTANCE, "{power} ÷ {current}²", (x, s) -> x[0] / x[1] / x[1])
                .rule("voltage-squared-law", CURRENT_FROM_POWER)
                .gives(POWER, "{voltage}² ÷ {resistance}", (x, s) -> x[0] * x[0] / x[1])
                .gives(VOLTAGE, "√({power} × {resistance})", (x, s) -> Math.sqrt(x[0] * x[1]))
                .gives(RESISTANCE, "{voltage}² ÷ {power}", (x, s) -> x[0] * x[0] / x[1]);
    }

    private static void load(final Topic topic) {
        topic.rule("load-power", CURRENT_FROM_POWER)
                .gives(LOAD_CURRENT, "{load-power} ÷ {supply-voltage}", (x, s) -> x[0] / x[1])
                .unless(EFFICIENCY)
                .slip("power-times-volts", "{load-power} × {supply-voltage}", (x, s) -> x[0] * x[1])
                .slip("volts-over-power", "{supply-voltage} ÷ {load-power}", (x, s) -> x[0] / x[1])
                .skips("watts-as-amps", "{load-power}")
                .slip("mains-voltage", "{load-power} ÷ 230", (x, s) -> x[0] / 230)
                .slip("mains-voltage", "{load-power} ÷ 120", (x, s) -> x[0] / 120)
                .slip(
                        "other-system-voltage",
                        "{load-power} ÷ (the other system voltage for {supply-voltage})",
                        (x, s) -> x[0] / Voltages.otherSystem(x[1]))
                .slip(
                        "nominal-for-given-voltage",
                        "{load-power} ÷ (the round voltage for {supply-voltage})",
                        (x, s) -> x[0] / Voltages.nominal(x[1]))
                .slip(
                        "voltage-squared",
                        "{load-power} ÷ {supply-voltage}²",
                        (x, s) -> x[0] / x[1] / x[1])
                .gives(LOAD_POWER, "{load-current} × {supply-voltage}", (x, s) -> x[0] * x[1])
                .unless(EFFICIENCY)
                .where(s -> !(s.gave(INTERNAL_RESISTANCE) && s.gave(RESISTANCE)))
                .slip(
                        "divided-for-product",
                        "{supply-voltage} ÷ {load-current}",
                        (x, s) -> x[0] / x[1])
                .slip(
                        "divided-for-product",
                        "{load-current} ÷ {supply-voltage}",
                        (x, s) -> x[0] / x[1])
                .gives(SUPPLY_VOLTAGE, "{load-power} ÷ {load-current}", (x, s) -> x[0] / x[1])
                .unless(EFFICIENCY, LOADS)
                .rule("load-resistance", CURRENT_FROM_POWER)
                .gives(LOAD_CURRENT, "{supply-voltage} ÷ {resistance}", (x, s) -> x[0] / x[1])
                .unless(EFFICIENCY, RETURN, INTERNAL_RESISTANCE)
                .slip("ohm-upside-down", "{resistance} ÷ {supply-voltage}", (x, s) -> x[0] / x[1])
                .slip("ohm-multiplied", "{supply-voltage} × {resistance}", (x, s) -> x[0] * x[1])
                .gives(RESISTANCE, "{supply-voltage} ÷ {load-current}", (x, s) -> x[0] / x[1])
                .unless(EFFICIENCY, RETURN, INTERNAL_RESISTANCE)
                .gives(SUPPLY_VOLTAGE, "{load-current} × {resistance}", (x, s) -> x[0] * x[1])
                .unless(EFFICIENCY, LOADS, RETURN, INTERNAL_RESISTANCE);
    }

    private static void converter(final Topic topic) {
        topic.rule("converter", CURRENT_THROUGH_A_CONVERTER)
                .gives(
                        SUPPLY_CURRENT,
                        "{load-power} ÷ ({supply-voltage} × {efficiency})",
                        (x, s) -> x[0] / (x[1] * x[2]))
                .slip(
                        "efficiency-left-out",
                        "{load-power} ÷ {supply-voltage}",
                        (x, s) -> x[0] / x[1])
                .slip(
                        "efficiency-multiplied",
                        "{load-power} × {efficiency} ÷ {supply-voltage}",
                        (x, s) -> x[0] * x[1] / x[2])
                .slip(
                        "loss-added",
                        "{load-power} × (2 − {efficiency}) ÷ {supply-voltage}",
                        (x, s) -> x[0] * (2 - x[1]) / x[2])
                .slip(
                        "loss-for-efficiency",
                        "{load-power} ÷ ({supply-voltage} × (1 − {efficiency}))",
                        (x, s) -> x[0] / (x[1] * (1 - x[2])))
                .slip(
                        "percent-as-number",
                        "{load-power} ÷ ({supply-voltage} × {efficiency} × 100)",
                        (x, s) -> x[0] / (x[1] * x[2] * 100))
                .slip("mains-voltage", "{load-power} ÷ 230", (x, s) -> x[0] / 230)
                .slip(
                        "other-system-voltage",
                        "{load-power} ÷ ((the other system voltage for {supply-voltage})"
                                + " × {efficiency})",
                        (x, s) -> x[0] / (Voltages.otherSystem(x[1]) * x[2]))
                .gives(
                        LOAD_POWER,
                        "{supply-current} × {supply-voltage} × {efficiency}",
                        (x, s) -> x[0] * x[1] * x[2])
                .slip(
                        "efficiency-left-out",
                        "{supply-current} × {supply-voltage}",
                        (x, s) -> x[0] * x[1])
                .slip(
                        "divided-for-product",
                        "{supply-current} × {supply-voltage} ÷ {efficiency}",
                        (x, s) -> x[0] * x[1] / x[2])
                .gives(
                        EFFICIENCY,
                        "{load-power} ÷ ({supply-voltage} × {supply-current})",
                        (x, s) -> x[0] / (x[1] * x[2]))
                .slip(
                        "quotient-turned-over",
                        "{supply-voltage} × {supply-current} ÷ {load-power}",
                        (x, s) -> x[0] * x[1] / x[2])
                .gives(
                        SUPPLY_VOLTAGE,
                        "{load-power} ÷ ({supply-current} × {efficiency})",
                        (x, s) -> x[0] / (x[1] * x[2]))
                .unless(LOADS);
    }

    private static void amount(final Topic topic) {
        topic.rule("charge-moved", ENERGY_AND_RUNTIME)
                .gives(CHARGE, "{current} × {time}", (x, s) -> x[0] * x[1])
                .gives(CURRENT, "{charge} ÷ {time}", (x, s) -> x[0] / x[1])
                .gives(TIME, "{charge} ÷ {current}", (x, s) -> x[0] / x[1])
                .rule("energy-used", ENERGY_AND_RUNTIME)
                .gives(ENERGY, "{power} × {time}", (x, s) -> x[0] * x[1])
                .slip(
                        "divided-for-product",
                        "{power} ÷ {time}",
                        (x, s) -> x[0] / x[1] * HOUR * HOUR)
                .gives(POWER, "{energy} ÷ {time}", (x, s) -> x[0] / x[1])
                .gives(TIME, "{energy} ÷ {power}", (x, s) -> x[0] / x[1])
                .rule("energy-of-charge", ENERGY_AND_RUNTIME)
                .gives(ENERGY, "{charge} × {voltage}", (x, s) -> x[0] * x[1])
                .gives(CHARGE, "{energy} ÷ {voltage}", (x, s) -> x[0] / x[1])
                .gives(VOLTAGE, "{energy} ÷ {charge}", (x, s) -> x[0] / x[1]);
    }
}
