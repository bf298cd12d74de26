package wireworthy.rules;

import static wireworthy.rules.Quantity.*;
import static wireworthy.rules.Skill.*;

import java.util.List;
import wireworthy.facts.Aluminium;
import wireworthy.facts.Awg;
import wireworthy.facts.Copper;

/** The conductor: section, gauge, strands, resistivity and resistance, out and back. */
final class ConductorRules {
    private static final double MM2 = 1e-6;
    private static final double MM = 1e-3;

    private ConductorRules() {}

    static List<Direction> directions() {
        final Topic topic = new Topic();
        section(topic);
        gauge(topic);
        resistivity(topic);
        length(topic);
        resistance(topic);
        return topic.directions();
    }

    private static void section(final Topic topic) {
        topic.rule("round-conductor", CONDUCTOR_SECTION)
                .gives(
                        SECTION,
                        "{strands} × π ÷ 4 × {diameter}²",
                        (x, s) -> x[0] * Math.PI / 4 * x[1] * x[1])
                .slip("diameter-for-area", "{strands} × {diameter}", (x, s) -> x[0] * x[1] * MM)
                .slip(
                        "quarter-forgotten",
                        "{strands} × π × {diameter}²",
                        (x, s) -> x[0] * Math.PI * x[1] * x[1])
                .forward()
                .gives(
                        DIAMETER,
                        "√(4 × {section} ÷ (π × {strands}))",
                        (x, s) -> Math.sqrt(4 * x[0] / (Math.PI * x[1])))
                .forward()
                .cost(1.2)
                .gives(
                        STRANDS,
                        "{section} ÷ (π ÷ 4 × {diameter}²)",
                        (x, s) -> x[0] / (Math.PI / 4 * x[1] * x[1]))
                .backward();
    }

    private static void gauge(final Topic topic) {
        topic.rule("gauge-table", CONDUCTOR_SECTION)
                .gives(SECTION, "area of {gauge}", (x, s) -> Awg.areaMm2(x[0]) * MM2)
                .when(GAUGE)
                .forward()
                .from(s -> Awg.source())
                .picks(
                        "aught-for-plain",
                        "area of the gauge with aughts and plain number exchanged for {gauge}",
                        (x, s) -> Math.abs(x[0]) <= 4 ? Awg.areaMm2(1 - x[0]) * MM2 : Double.NaN)
                .gives(DIAMETER, "diameter of {gauge}", (x, s) -> Awg.diameterMm(x[0]) * MM)
                .when(GAUGE)
                .forward()
                .from(s -> Awg.source())
                .gives(
                        GAUGE,
                        "highest gauge number of at least {section}",
                        (x, s) -> gaugeFor(x[0]))
                .forward()
                .from(s -> Awg.source())
                .gives(
                        GAUGE,
                        "highest gauge number of at least {standard-section}",
                        (x, s) -> gaugeFor(x[0]))
                .unless(SECTION, DIAMETER, SECTION_FOR_DROP)
                .forward()
                .cost(3)
                .from(s -> Awg.source())
                .picks(
                        "gauge-number-as-size",
                        "two sizes towards the bigger number from {standard-section}",
                        (x, s) -> gaugeFor(x[0]) + 4)
                .gives(
                        GAUGE,
                        "highest gauge number of at least {section-for-drop}",
                        (x, s) -> gaugeFor(x[0]))
                .when(SECTION_FOR_DROP)
                .forward()
                .from(s -> Awg.source())
                .picks(
                        "gauge-number-as-size",
                        "two sizes towards the bigger number from {section-for-drop}",
                        (x, s) -> gaugeFor(x[0]) + 4);
    }

    /** The highest whole gauge number whose area reaches a section in m2; NaN above 4/0. */
    private static double gaugeFor(final double section) {
        return Awg.numbers().stream()
                .filter(n -> Awg.areaMm2(n) * MM2 >= section * (1 - 1e-9))
                .mapToDouble(Integer::doubleValue)
                .max()
                .orElse(Double.NaN);
    }

    private static void resistivity(final Topic topic) {
        topic.rule("warm-conductor", RESISTANCE_OF_A_CABLE)
                .gives(
                        RESISTIVITY,
                        "0.0172 × (1 + 0.00393 × ({conductor-temperature} − 20))",
                        (x, s) ->
                                Copper.RESISTIVITY_OHM_MM2_PER_M
                                        * MM2
                                        * (1 + Copper.ALPHA_20 * (x[0] - 20)))
                .where(s -> warmed(s) && !s.aluminium())
                .forward()
                .from(s -> Copper.source())
                .slip(
                        "aluminium-resistivity",
                        "0.0282 × (1 + 0.00403 × ({conductor-temperature} − 20))",
                        (x, s) ->
                                Aluminium.RESISTIVITY_OHM_MM2_PER_M
                                        * MM2
                                        * (1 + Aluminium.ALPHA_20 * (x[0] - 20)))
                .gives(
                        RESISTIVITY,
                        "0.0282 × (1 + 0.00403 × ({conductor-temperature} − 20))",
                        (x, s) ->
                                Aluminium.RESISTIVITY_OHM_MM2_PER_M
                                        * MM2
                                        * (1 + Aluminium.ALPHA_20 * (x[0] - 20)))
                .where(Setting::aluminium)
                .forward()
                .from(s -> Aluminium.source())
                .gives(
                        CONDUCTOR_TEMPERATURE,
                        "20 + ({resistivity} ÷ 0.0172 − 1) ÷ 0.00393",
                        (x, s) ->
                                20
                                        + (x[0] / (Copper.RESISTIVITY_OHM_MM2_PER_M * MM2) - 1)
                                                / Copper.ALPHA_20)
                .where(s -> !s.aluminium())
                .backward()
                .from(s -> Copper.source());
    }

    private static boolean warmed(final Setting s) {
        return s.gave(CONDUCTOR_TEMPERATURE) || s.gave(CONDUCTOR_METAL);
    }

    private static void length(final Topic topic) {
        topic.rule("out-and-back", OUT_AND_BACK_LENGTH)
                .gives(LOOP_LENGTH, "2 × {one-way-length}", (x, s) -> 2 * x[0])
                .where(s -> !s.chassis())
                .forward()
                .skips("one-way-length", "{one-way-length}")
                .gives(LOOP_LENGTH, "{one-way-length}", (x, s) -> x[0])
                .where(Setting::chassis)
                .forward()
                .gives(ONE_WAY_LENGTH, "{loop-length} ÷ 2", (x, s) -> x[0] / 2)
                .where(s -> !s.chassis())
                .backward()
                .gives(ONE_WAY_LENGTH, "{loop-length}", (x, s) -> x[0])
                .where(Setting::chassis)
                .backward();
    }

    private static void resistance(final Topic topic) {
        topic.rule("cable-resistance", RESISTANCE_OF_A_CABLE)
                .gives(
                        LOOP_RESISTANCE,
                        "{resistivity} × {loop-length} ÷ {section}",
                        (x, s) -> x[0] * x[1] / x[2])
                .where(s -> !chassisMeasured(s))
                .unless(RESISTANCE_PER_LENGTH)
                .forward()
                .slip(
                        "area-multiplied",
                        "{resistivity} × {loop-length} × {section}",
                        (x, s) -> x[0] * x[1] * x[2] / MM2 / MM2)
                .slip(
                        "diameter-for-area-in-drop",
                        "{resistivity} × {loop-length} ÷ (the diameter of {section})",
                        (x, s) -> x[0] * x[1] / (2 * Math.sqrt(x[2] / Math.PI) * MM))
                .slip(
                        "aluminium-resistivity",
                        "0.0282 × {loop-length} ÷ {section}",
                        (x, s) -> Aluminium.RESISTIVITY_OHM_MM2_PER_M * MM2 * x[0] / x[1])
                .slip(
                        "return-counted-twice",
                        "{resistivity} × 2 × {loop-length} ÷ {section}",
                        (x, s) -> s.gave(LOOP_LENGTH) ? x[0] * 2 * x[1] / x[2] : Double.NaN)
                .gives(
                        LOOP_RESISTANCE,
                        "{resistivity} × {loop-length} ÷ {section} + {resistance}",
                        (x, s) -> x[0] * x[1] / x[2] + x[3])
                .where(ConductorRules::chassisMeasured)
                .unless(RESISTANCE_PER_LENGTH)
                .forward()
                .gives(
                        LOOP_RESISTANCE,
                        "{resistance-per-length} ÷ 1000 × {loop-length}",
                        (x, s) -> x[0] * x[1])
                .where(s -> !chassisMeasured(s))
                .forward()
                .slip(
                        "milliohm-as-ohm",
                        "{resistance-per-length} × {loop-length}",
                        (x, s) -> x[0] * 1000 * x[1])
                .slip(
                        "return-counted-twice",
                        "{resistance-per-length} ÷ 1000 × 2 × {loop-length}",
                        (x, s) -> s.gave(LOOP_LENGTH) ? x[0] * 2 * x[1] : Double.NaN)
                .gives(
                        LOOP_RESISTANCE,
                        "{resistance-per-length} ÷ 1000 × {loop-length} + {resistance}",
                        (x, s) -> x[0] * x[1] + x[2])
                .where(ConductorRules::chassisMeasured)
                .forward()
                .gives(
                        RESISTIVITY,
                        "{loop-resistance} × {section} ÷ {loop-length}",
                        (x, s) -> x[0] * x[1] / x[2])
                .backward()
                .gives(
                        SECTION,
                        "{resistivity} × {loop-length} ÷ {loop-resistance}",
                        (x, s) -> x[0] * x[1] / x[2])
                .backward()
                .gives(
                        LOOP_LENGTH,
                        "{loop-resistance} × {section} ÷ {resistivity}",
                        (x, s) -> x[0] * x[1] / x[2])
                .backward()
                .gives(
                        LOOP_LENGTH,
                        "{loop-resistance} ÷ {resistance-per-length} × 1000",
                        (x, s) -> x[0] / x[1])
                .backward()
                .rule("resistance-per-metre", RESISTANCE_OF_A_CABLE)
                .gives(
                        RESISTANCE_PER_LENGTH,
                        "{resistivity} ÷ {section} × 1000",
                        (x, s) -> x[0] / x[1])
                .forward()
                .gives(
                        RESISTANCE_PER_LENGTH,
                        "{loop-resistance} ÷ {loop-length} × 1000",
                        (x, s) -> x[0] / x[1])
                .backward()
                .gives(
                        RESISTIVITY,
                        "{resistance-per-length} ÷ 1000 × {section}",
                        (x, s) -> x[0] * x[1])
                .backward()
                .gives(
                        SECTION,
                        "{resistivity} ÷ {resistance-per-length} × 1000",
                        (x, s) -> x[0] / x[1])
                .backward();
    }

    private static boolean chassisMeasured(final Setting s) {
        return s.chassis() && s.gave(RESISTANCE);
    }
}
