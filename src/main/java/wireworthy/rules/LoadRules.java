package wireworthy.rules;

import static wireworthy.rules.Quantity.*;
import static wireworthy.rules.Skill.*;

import java.util.List;
import java.util.Set;

/** One load, or several of one kind, on a circuit; resistances side by side and in a string. */
final class LoadRules {
    /** Where nothing else is given, the cable itself is the element. */
    private static final Set<Quantity> CABLE_ALONE =
            Set.of(
                    VOLTAGE,
                    LOOP_RESISTANCE,
                    RESISTANCE_PER_LENGTH,
                    ONE_WAY_LENGTH,
                    LOOP_LENGTH,
                    RETURN,
                    SECTION,
                    GAUGE,
                    DIAMETER,
                    STRANDS,
                    CONDUCTOR_METAL,
                    CONDUCTOR_TEMPERATURE,
                    RESISTIVITY);

    private LoadRules() {}

    static List<Direction> directions() {
        final Topic topic = new Topic();
        oneKind(topic);
        starting(topic);
        resistances(topic);
        oneElement(topic);
        return topic.directions();
    }

    private static void oneKind(final Topic topic) {
        topic.rule("loads-add", ADDING_LOADS)
                .gives(CIRCUIT_CURRENT, "{load-count} × {load-current}", (x, s) -> x[0] * x[1])
                .when(LOAD_COUNT)
                .unless(EFFICIENCY, SUPPLY_CURRENT)
                .forward()
                .skips("count-left-out", "{load-current}")
                .gives(CIRCUIT_CURRENT, "{load-count} × {supply-current}", (x, s) -> x[0] * x[1])
                .when(LOAD_COUNT)
                .forward()
                .skips("count-left-out", "{supply-current}")
                .gives(LOAD_CURRENT, "{circuit-current} ÷ {load-count}", (x, s) -> x[0] / x[1])
                .when(LOAD_COUNT)
                .unless(EFFICIENCY, LOADS)
                .backward()
                .gives(SUPPLY_CURRENT, "{circuit-current} ÷ {load-count}", (x, s) -> x[0] / x[1])
                .when(LOAD_COUNT, EFFICIENCY)
                .unless(LOADS)
                .backward()
                .gives(LOAD_COUNT, "{circuit-current} ÷ {load-current}", (x, s) -> x[0] / x[1])
                .unless(LOADS)
                .backward()
                .rule("only-load", ADDING_LOADS)
                .gives(CIRCUIT_CURRENT, "{load-current}", (x, s) -> x[0])
                .unless(LOAD_COUNT, EFFICIENCY, SUPPLY_CURRENT)
                .carried()
                .cost(0.5)
                .gives(CIRCUIT_CURRENT, "{supply-current}", (x, s) -> x[0])
                .unless(LOAD_COUNT)
                .carried()
                .cost(0.5)
                .gives(LOAD_CURRENT, "{circuit-current}", (x, s) -> x[0])
                .unless(LOAD_COUNT, EFFICIENCY, LOADS)
                .carried()
                .gives(SUPPLY_CURRENT, "{circuit-current}", (x, s) -> x[0])
                .when(EFFICIENCY)
                .unless(LOAD_COUNT, LOADS)
                .carried();
    }

    private static void starting(final Topic topic) {
        topic.rule("starting", ADDING_LOADS)
                .gives(START_CURRENT, "{start-multiple} × {circuit-current}", (x, s) -> x[0] * x[1])
                .when(START_MULTIPLE)
                .unless(LOAD_COUNT, LOADS)
                .forward()
                .gives(
                        START_CURRENT,
                        "{circuit-current} − {load-current} + {start-multiple} × {load-current}",
                        (x, s) -> x[0] - x[1] + x[2] * x[1])
                .when(START_MULTIPLE, LOAD_COUNT)
                .unless(LOADS)
                .forward();
    }

    private static void resistances(final Topic topic) {
        topic.rule("several-resistances", ADDING_LOADS)
                .gives(PARALLEL_RESISTANCE, "{resistance} ÷ {load-count}", (x, s) -> x[0] / x[1])
                .when(LOAD_COUNT)
                .slip(
                        "parallel-adds-resistance",
                        "{load-count} × {resistance}",
                        (x, s) -> x[0] * x[1])
                .gives(SERIES_RESISTANCE, "{resistance} × {load-count}", (x, s) -> x[0] * x[1])
                .when(LOAD_COUNT)
                .rule("whole-resistance", CURRENT_FROM_POWER)
                .gives(
                        CIRCUIT_CURRENT,
                        "{supply-voltage} ÷ {parallel-resistance}",
                        (x, s) -> x[0] / x[1])
                .when(PARALLEL_RESISTANCE)
                .gives(
                        CIRCUIT_CURRENT,
                        "{supply-voltage} ÷ {series-resistance}",
                        (x, s) -> x[0] / x[1])
                .when(SERIES_RESISTANCE);
    }

    /** A question about one element may use the plain names for the whole circuit's values. */
    private static void oneElement(final Topic topic) {
        topic.rule("one-element", CIRCUIT_IDEAS)
                .gives(CIRCUIT_CURRENT, "{current}", (x, s) -> x[0])
                .carried()
                .gives(CURRENT, "{circuit-current}", (x, s) -> x[0])
                .unless(LOADS)
                .carried()
                .gives(LOAD_CURRENT, "{current}", (x, s) -> x[0])
                .unless(LOADS, EFFICIENCY)
                .carried()
                .gives(CURRENT, "{load-current}", (x, s) -> x[0])
                .carried()
                .gives(LOAD_POWER, "{power}", (x, s) -> x[0])
                .unless(LOADS)
                .carried()
                .gives(POWER, "{load-power}", (x, s) -> x[0])
                .carried()
                .gives(SUPPLY_VOLTAGE, "{voltage}", (x, s) -> x[0])
                .carried()
                .gives(VOLTAGE, "{supply-voltage}", (x, s) -> x[0])
                .unless(INTERNAL_RESISTANCE)
                .carried()
                .gives(VOLTAGE, "{terminal-voltage}", (x, s) -> x[0])
                .when(INTERNAL_RESISTANCE)
                .carried()
                .gives(RESISTANCE, "{loop-resistance}", (x, s) -> x[0])
                .where(s -> CABLE_ALONE.containsAll(s.given()))
                .carried()
                .gives(RESISTANCE, "{parallel-resistance}", (x, s) -> x[0])
                .when(PARALLEL_RESISTANCE)
                .carried()
                .gives(RESISTANCE, "{series-resistance}", (x, s) -> x[0])
                .when(SERIES_RESISTANCE)
                .carried();
    }
}
