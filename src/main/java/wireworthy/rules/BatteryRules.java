package wireworthy.rules;

import static wireworthy.rules.Quantity.*;
import static wireworthy.rules.Skill.*;

import java.util.List;

/** Batteries in series and parallel, energy, runtime and charging. */
final class BatteryRules {
    private BatteryRules() {}

    static List<Direction> directions() {
        final Topic topic = new Topic();
        bank(topic);
        energy(topic);
        runtime(topic);
        need(topic);
        charging(topic);
        return topic.directions();
    }

    private static void bank(final Topic topic) {
        topic.rule("series-adds-volts", SERIES_AND_PARALLEL_BATTERIES)
                .gives(BANK_VOLTAGE, "{in-series} × {battery-voltage}", (x, s) -> x[0] * x[1])
                .forward()
                .slip(
                        "parallel-adds-volts",
                        "{in-parallel} × {in-series} × {battery-voltage}",
                        (x, s) -> x[0] * x[1] * x[2])
                .gives(BATTERY_VOLTAGE, "{bank-voltage} ÷ {in-series}", (x, s) -> x[0] / x[1])
                .backward()
                .gives(IN_SERIES, "{bank-voltage} ÷ {battery-voltage}", (x, s) -> x[0] / x[1])
                .backward()
                .gives(BANK_VOLTAGE, "{supply-voltage}", (x, s) -> x[0])
                .unless(BATTERY_VOLTAGE)
                .carried()
                .gives(SUPPLY_VOLTAGE, "{bank-voltage}", (x, s) -> x[0])
                .carried()
                .rule("parallel-adds-amp-hours", SERIES_AND_PARALLEL_BATTERIES)
                .gives(BANK_CAPACITY, "{in-parallel} × {battery-capacity}", (x, s) -> x[0] * x[1])
                .forward()
                .slip(
                        "series-adds-amp-hours",
                        "{in-series} × {in-parallel} × {battery-capacity}",
                        (x, s) -> x[0] * x[1] * x[2])
                .gives(BATTERY_CAPACITY, "{bank-capacity} ÷ {in-parallel}", (x, s) -> x[0] / x[1])
                .backward()
                .slip(
                        "multiplied-for-quotient",
                        "{bank-capacity} × {in-parallel}",
                        (x, s) -> x[0] * x[1])
                .gives(IN_PARALLEL, "{bank-capacity} ÷ {battery-capacity}", (x, s) -> x[0] / x[1])
                .backward()
                .rule("resistance-of-a-bank", SERIES_AND_PARALLEL_BATTERIES)
                .gives(
                        INTERNAL_RESISTANCE,
                        "{in-series} × {battery-resistance} ÷ {in-parallel}",
                        (x, s) -> x[0] * x[1] / x[2])
                .forward()
                .slip(
                        "parallel-adds-resistance",
                        "{in-series} × {battery-resistance} × {in-parallel}",
                        (x, s) -> x[0] * x[1] * x[2]);
    }

    private static void energy(final Topic topic) {
        topic.rule("bank-energy", ENERGY_AND_RUNTIME)
                .gives(BANK_ENERGY, "{bank-capacity} × {bank-voltage}", (x, s) -> x[0] * x[1])
                .slip(
                        "divided-for-product",
                        "{bank-capacity} ÷ {bank-voltage}",
                        (x, s) -> x[0] / x[1])
                .gives(BANK_CAPACITY, "{bank-energy} ÷ {bank-voltage}", (x, s) -> x[0] / x[1])
                .backward()
                .gives(BANK_VOLTAGE, "{bank-energy} ÷ {bank-capacity}", (x, s) -> x[0] / x[1])
                .backward()
                .rule("usable-energy", ENERGY_AND_RUNTIME)
                .gives(USABLE_ENERGY, "{bank-energy} × {usable-share}", (x, s) -> x[0] * x[1])
                .forward()
                .skips("whole-battery", "{bank-energy}")
                .slip(
                        "remaining-share",
                        "{bank-energy} × (1 − {usable-share})",
                        (x, s) -> x[0] * (1 - x[1]))
                .gives(BANK_ENERGY, "{usable-energy} ÷ {usable-share}", (x, s) -> x[0] / x[1])
                .backward()
                .gives(USABLE_SHARE, "{usable-energy} ÷ {bank-energy}", (x, s) -> x[0] / x[1])
                .backward();
    }

    private static void runtime(final Topic topic) {
        topic.rule("runtime", ENERGY_AND_RUNTIME)
                .gives(RUNTIME, "{usable-energy} ÷ {load-power}", (x, s) -> x[0] / x[1])
                .unless(EFFICIENCY, LOAD_COUNT, LOADS)
                .forward()
                .slip(
                        "hours-over-watts",
                        "{bank-capacity} × {usable-share} ÷ {load-power}",
                        (x, s) -> x[0] * x[1] / x[2])
                .slip(
                        "runtime-upside-down",
                        "{load-power} ÷ {usable-energy}",
                        (x, s) -> x[0] / x[1] * HOUR * HOUR)
                .slip(
                        "hours-as-minutes",
                        "{usable-energy} ÷ {load-power} × 60",
                        (x, s) -> x[0] / x[1] * 60)
                .gives(
                        RUNTIME,
                        "{usable-energy} × {efficiency} ÷ {load-power}",
                        (x, s) -> x[0] * x[1] / x[2])
                .unless(LOAD_COUNT, LOADS)
                .forward()
                .slip(
                        "runtime-efficiency-inverted",
                        "{usable-energy} ÷ ({efficiency} × {load-power})",
                        (x, s) -> x[0] / (x[1] * x[2]))
                .slip(
                        "efficiency-left-out",
                        "{usable-energy} ÷ {load-power}",
                        (x, s) -> x[0] / x[1])
                .slip(
                        "hours-over-watts",
                        "{bank-capacity} × {usable-share} × {efficiency} ÷ {load-power}",
                        (x, s) -> x[0] * x[1] * x[2] / x[3])
                .slip(
                        "runtime-upside-down",
                        "{load-power} ÷ ({usable-energy} × {efficiency})",
                        (x, s) -> x[0] / (x[1] * x[2]) * HOUR * HOUR)
                .slip(
                        "hours-as-minutes",
                        "{usable-energy} × {efficiency} ÷ {load-power} × 60",
                        (x, s) -> x[0] * x[1] / x[2] * 60)
                .gives(
                        RUNTIME,
                        "{bank-capacity} × {usable-share} ÷ {circuit-current}",
                        (x, s) -> x[0] * x[1] / x[2])
                .forward()
                .slip("whole-battery", "{bank-capacity} ÷ {circuit-current}", (x, s) -> x[0] / x[1])
                .slip(
                        "remaining-share",
                        "{bank-capacity} × (1 − {usable-share}) ÷ {circuit-current}",
                        (x, s) -> x[0] * (1 - x[1]) / x[2])
                .slip(
                        "runtime-upside-down",
                        "{circuit-current} ÷ ({bank-capacity} × {usable-share})",
                        (x, s) -> x[0] / (x[1] * x[2]) * HOUR * HOUR)
                .slip(
                        "hours-as-minutes",
                        "{bank-capacity} × {usable-share} ÷ {circuit-current} × 60",
                        (x, s) -> x[0] * x[1] / x[2] * 60)
                .gives(
                        CIRCUIT_CURRENT,
                        "{bank-capacity} × {usable-share} ÷ {runtime}",
                        (x, s) -> x[0] * x[1] / x[2])
                .backward()
                .gives(
                        BANK_CAPACITY,
                        "{circuit-current} × {runtime} ÷ {usable-share}",
                        (x, s) -> x[0] * x[1] / x[2])
                .backward()
                .slip("whole-battery", "{circuit-current} × {runtime}", (x, s) -> x[0] * x[1])
                .slip(
                        "multiplied-for-quotient",
                        "{circuit-current} × {runtime} × {usable-share}",
                        (x, s) -> x[0] * x[1] * x[2]);
    }

    private static final double HOUR = 3600;

    private static void need(final Topic topic) {
        topic.rule("capacity-needed", ENERGY_AND_RUNTIME)
                .gives(
                        CAPACITY_NEEDED,
                        "{daily-energy} × {days-of-reserve} ÷ ({usable-share} × {bank-voltage})",
                        (x, s) -> x[0] * x[1] / (x[2] * x[3]))
                .forward()
                .slip(
                        "whole-battery",
                        "{daily-energy} × {days-of-reserve} ÷ {bank-voltage}",
                        (x, s) -> x[0] * x[1] / x[2])
                .slip(
                        "remaining-share",
                        "{daily-energy} × {days-of-reserve}"
                                + " ÷ ((1 − {usable-share}) × {bank-voltage})",
                        (x, s) -> x[2] < 1 ? x[0] * x[1] / ((1 - x[2]) * x[3]) : Double.NaN)
                .rule("days-without-charge", ENERGY_AND_RUNTIME)
                .gives(
                        DAYS_WITHOUT_CHARGE,
                        "{usable-energy} ÷ {daily-energy}",
                        (x, s) -> x[0] / x[1])
                .forward()
                .slip(
                        "runtime-upside-down",
                        "{daily-energy} ÷ {usable-energy}",
                        (x, s) -> x[0] / x[1])
                .rule("daily-energy", ENERGY_AND_RUNTIME)
                .gives(
                        DAILY_ENERGY,
                        "{array-power} × {sun-hours} × {array-efficiency}",
                        (x, s) -> x[0] * x[1] * x[2])
                .unless(LOADS)
                .backward()
                .rule("array-power", CHARGING)
                .gives(
                        ARRAY_POWER,
                        "{daily-energy} ÷ ({sun-hours} × {array-efficiency})",
                        (x, s) -> x[0] / (x[1] * x[2]))
                .forward()
                .slip(
                        "multiplied-for-quotient",
                        "{daily-energy} ÷ {sun-hours} × {array-efficiency}",
                        (x, s) -> x[0] / x[1] * x[2])
                .gives(
                        SUN_HOURS,
                        "{daily-energy} ÷ ({array-power} × {array-efficiency})",
                        (x, s) -> x[0] / (x[1] * x[2]))
                .backward()
                .slip(
                        "multiplied-for-quotient",
                        "{daily-energy} ÷ {array-power} × {array-efficiency}",
                        (x, s) -> x[0] / x[1] * x[2])
                .gives(
                        ARRAY_EFFICIENCY,
                        "{daily-energy} ÷ ({array-power} × {sun-hours})",
                        (x, s) -> x[0] / (x[1] * x[2]))
                .backward();
    }

    private static void charging(final Topic topic) {
        topic.rule("charge-time", CHARGING)
                .gives(
                        CHARGE_TIME,
                        "{bank-capacity} × {usable-share}"
                                + " ÷ ({charge-current} × {charge-efficiency})",
                        (x, s) -> x[0] * x[1] / (x[2] * x[3]))
                .forward()
                .slip(
                        "charging-loss-left-out",
                        "{bank-capacity} × {usable-share} ÷ {charge-current}",
                        (x, s) -> x[0] * x[1] / x[2])
                .slip(
                        "whole-battery",
                        "{bank-capacity} ÷ ({charge-current} × {charge-efficiency})",
                        (x, s) -> x[0] / (x[1] * x[2]))
                .gives(
                        CHARGE_CURRENT,
                        "{bank-capacity} × {usable-share}"
                                + " ÷ ({charge-time} × {charge-efficiency})",
                        (x, s) -> x[0] * x[1] / (x[2] * x[3]))
                .backward()
                .slip(
                        "charging-loss-left-out",
                        "{bank-capacity} × {usable-share} ÷ {charge-time}",
                        (x, s) -> x[0] * x[1] / x[2])
                .slip(
                        "whole-battery",
                        "{bank-capacity} ÷ ({charge-time} × {charge-efficiency})",
                        (x, s) -> x[0] / (x[1] * x[2]))
                .gives(
                        CHARGE_EFFICIENCY,
                        "{bank-capacity} × {usable-share} ÷ ({charge-current} × {charge-time})",
                        (x, s) -> x[0] * x[1] / (x[2] * x[3]))
                .backward()
                .gives(
                        BANK_CAPACITY,
                        "{charge-current} × {charge-efficiency} × {charge-time} ÷ {usable-share}",
                        (x, s) -> x[0] * x[1] * x[2] / x[3])
                .backward()
                .rule("charge-energy", CHARGING)
                .gives(
                        CHARGE_ENERGY,
                        "{bank-voltage} × {charge-current} × {charge-time} × {charge-efficiency}",
                        (x, s) -> x[0] * x[1] * x[2] * x[3])
                .forward()
                .slip(
                        "charging-loss-left-out",
                        "{bank-voltage} × {charge-current} × {charge-time}",
                        (x, s) -> x[0] * x[1] * x[2])
                .rule("solar-energy", CHARGING)
                .gives(
                        SOLAR_ENERGY,
                        "{array-power} × {sun-hours} × {array-efficiency}",
                        (x, s) -> x[0] * x[1] * x[2])
                .forward()
                .rule("daily-balance", CHARGING)
                .gives(
                        DAILY_BALANCE,
                        "{solar-energy} + {charge-energy} − {daily-energy}",
                        (x, s) -> x[0] + x[1] - x[2])
                .where(s -> s.gave(DAILY_ENERGY) || s.gave(LOADS))
                .forward();
    }
}
