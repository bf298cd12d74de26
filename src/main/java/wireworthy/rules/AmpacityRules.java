package wireworthy.rules;

import static wireworthy.rules.Quantity.*;
import static wireworthy.rules.Skill.*;

import java.util.List;
import java.util.stream.Collectors;
import wireworthy.facts.BundleFactors;
import wireworthy.facts.CableTable;
import wireworthy.facts.CableTables;
import wireworthy.facts.Source;
import wireworthy.texts.TextBundle;

/** What a cable can carry: the table, and what heat and company leave of it. */
final class AmpacityRules {
    private static final TextBundle REFUSALS = new TextBundle("refusals");

    private static final double MM2 = 1e-6;
    private static final double REFERENCE = 30;
    private static final double IN_WALL = 0.5;

    private AmpacityRules() {}

    static List<Direction> directions() {
        final Topic topic = new Topic();
        table(topic);
        ambient(topic);
        company(topic);
        derated(topic);
        needed(topic);
        return topic.directions();
    }

    private static void table(final Topic topic) {
        topic.rule("ampacity-table", AMPACITY_FROM_A_TABLE)
                .gives(
                        TABLE_AMPACITY,
                        "looked up in the table by {section} and {insulation-temperature} °C",
                        AmpacityRules::fromTable)
                .forward()
                .from(s -> s.table().source())
                .refuses(AmpacityRules::whyNotInTable);
    }

    private static double fromTable(final double[] x, final Setting s) {
        final CableTable table = s.table();
        final double mm2 = x[0] / MM2;
        if (mm2 > table.largestSectionMm2() * (1 + 1e-9)) {
            return Double.NaN;
        }
        return table.rowFor(mm2)
                .map(row -> table.ampacity(row, x[1]).orElse(Double.NaN))
                .orElse(Double.NaN);
    }

    private static Refusal whyNotInTable(final double[] x, final Setting s) {
        final double mm2 = x[0] / MM2;
        if (mm2 > s.table().largestSectionMm2()) {
            return new Refusal("given.cable-table", tooLarge(s));
        }
        if (s.table().rowFor(mm2).isEmpty()) {
            return new Refusal(
                    "given.section",
                    REFUSALS.of(
                            "table-begins",
                            "table",
                            s.table().title(),
                            "row",
                            s.table().rows().get(0).label()));
        }
        return new Refusal(
                "given.insulation-temperature",
                REFUSALS.of("no-insulation", "table", s.table().title()));
    }

    static String tooLarge(final Setting s) {
        final double last = s.table().largestSectionMm2();
        final String others =
                CableTables.all().stream()
                        .filter(each -> each.largestSectionMm2() > last)
                        .map(CableTable::id)
                        .collect(Collectors.joining(", "));
        return REFUSALS.of(
                others.isEmpty() ? "last-table-ends" : "table-ends",
                "table",
                s.table().id(),
                "mm2",
                FigureText.number(last * MM2, Dimension.AREA, 3),
                "others",
                others);
    }

    private static void ambient(final Topic topic) {
        topic.rule("ambient", DERATING)
                .gives(
                        AMBIENT_FACTOR,
                        "√(({insulation-temperature} − {ambient-temperature})"
                                + " ÷ ({insulation-temperature} − 30)), at most 1",
                        (x, s) -> ambientFactor(x[0], x[1]))
                .where(s -> !s.engineSpace())
                .forward()
                .refuses(AmpacityRules::tooHot)
                .gives(
                        AMBIENT_FACTOR,
                        "engine-space factor at {insulation-temperature} °C",
                        (x, s) -> s.table().engineSpaceFactor(x[0]).orElse(Double.NaN))
                .where(Setting::engineSpace)
                .unless(AMBIENT_TEMPERATURE)
                .forward()
                .from(s -> s.table().source())
                .refuses(AmpacityRules::boatsOnly)
                .gives(
                        AMBIENT_FACTOR,
                        "the smaller of the engine-space factor at {insulation-temperature} °C"
                                + " and the ambient factor at {ambient-temperature} °C",
                        AmpacityRules::smaller)
                .where(Setting::engineSpace)
                .when(AMBIENT_TEMPERATURE)
                .forward()
                .from(s -> s.table().source())
                .refuses((x, s) -> x[1] < x[0] ? boatsOnly(x, s) : tooHot(x, s));
    }

    /**
     * What an ambient above 30 degC leaves: the heat a conductor may give off goes with the square
     * of its current, so sqrt((Ti - Ta)/(Ti - 30)). The form behind the published ambient tables.
     */
    private static double ambientFactor(final double insulation, final double ambient) {
        if (ambient >= insulation) {
            return Double.NaN;
        }
        return ambient <= REFERENCE
                ? 1
                : Math.sqrt((insulation - ambient) / (insulation - REFERENCE));
    }

    private static double smaller(final double[] x, final Setting s) {
        return Math.min(
                s.table().engineSpaceFactor(x[0]).orElse(Double.NaN), ambientFactor(x[0], x[1]));
    }

    private static Refusal tooHot(final double[] x, final Setting s) {
        return new Refusal(
                "given.ambient-temperature",
                REFUSALS.of(
                        "too-hot",
                        "around",
                        FigureText.of(x[1], Dimension.TEMPERATURE),
                        "insulation",
                        FigureText.of(x[0], Dimension.TEMPERATURE)));
    }

    private static Refusal boatsOnly(final double[] x, final Setting s) {
        return new Refusal(
                "given.engine-space", REFUSALS.of("boats-only", "table", s.table().id()));
    }

    private static void company(final Topic topic) {
        topic.rule("company", DERATING)
                .gives(
                        BUNDLE_FACTOR,
                        "factor for {bundled} loaded conductors together",
                        (x, s) -> BundleFactors.factor(x[0]))
                .forward()
                .from(s -> BundleFactors.source());
    }

    private static void derated(final Topic topic) {
        deratedBy(topic, "", 1, s -> !s.inThermalInsulation());
        deratedBy(topic, " × 0.5", IN_WALL, Setting::inThermalInsulation);
    }

    private static void deratedBy(
            final Topic topic,
            final String more,
            final double k3,
            final java.util.function.Predicate<Setting> where) {
        topic.rule("derated-ampacity", DERATING)
                .gives(
                        AMPACITY,
                        "{table-ampacity} × {ambient-factor} × {bundle-factor}" + more,
                        (x, s) -> x[0] * x[1] * x[2] * k3)
                .where(where)
                .forward()
                .skips("derating-left-out", "{table-ampacity}")
                .slip(
                        "one-factor-only",
                        "{table-ampacity} × {ambient-factor}, without {bundle-factor}",
                        (x, s) -> lowers(x[1]) && lowers(x[2]) ? x[0] * x[1] : Double.NaN)
                .slip(
                        "one-factor-only",
                        "{table-ampacity} × {bundle-factor}, without {ambient-factor}",
                        (x, s) -> lowers(x[1]) && lowers(x[2]) ? x[0] * x[1] : Double.NaN)
                .slip(
                        "factor-divided",
                        "{table-ampacity} ÷ ({ambient-factor} × {bundle-factor})",
                        (x, s) -> x[0] / (x[1] * x[2]))
                .slip(
                        "reductions-added",
                        "{table-ampacity} × (1 − (1 − {ambient-factor}) − (1 − {bundle-factor}))",
                        (x, s) -> x[0] * (x[1] + x[2] - 1))
                .slip(
                        "complement-used",
                        "{table-ampacity} × (1 − {ambient-factor})",
                        (x, s) -> x[0] * (1 - x[1]))
                .slip(
                        "complement-used",
                        "{table-ampacity} × (1 − {bundle-factor})",
                        (x, s) -> x[0] * (1 - x[1]))
                .gives(
                        TABLE_AMPACITY,
                        "{ampacity} ÷ ({ambient-factor} × {bundle-factor}" + more + ")",
                        (x, s) -> x[0] / (x[1] * x[2] * k3))
                .where(where)
                .backward();
    }

    private static boolean lowers(final double factor) {
        return factor < 1;
    }

    private static void needed(final Topic topic) {
        neededBy(topic, "", 1, s -> !s.inThermalInsulation());
        neededBy(topic, " × 0.5", IN_WALL, Setting::inThermalInsulation);
        topic.rule("section-for-ampacity", NEXT_STANDARD_SIZE)
                .gives(
                        SECTION_FOR_AMPACITY,
                        "thinnest row of the table that carries the {ampacity-needed} at"
                                + " {insulation-temperature} °C",
                        AmpacityRules::rowCarrying)
                .forward()
                .from(s -> s.table().source())
                .refuses((x, s) -> new Refusal("given.cable-table", noRow(x, s)));
    }

    private static void neededBy(
            final Topic topic,
            final String more,
            final double k3,
            final java.util.function.Predicate<Setting> where) {
        topic.rule("ampacity-needed", DERATING)
                .gives(
                        AMPACITY_NEEDED,
                        "{fuse} ÷ ({ambient-factor} × {bundle-factor}" + more + ")",
                        (x, s) -> x[0] / (x[1] * x[2] * k3))
                .where(where.and(s -> !s.cableKnown() || s.gave(Quantity.FUSE)))
                .forward()
                .slip(
                        "needed-rating-multiplied",
                        "{fuse} × {ambient-factor} × {bundle-factor}" + more,
                        (x, s) -> x[0] * x[1] * x[2] * k3)
                .gives(
                        AMPACITY_NEEDED,
                        "(next standard rating at or above {fuse-floor}) ÷ ({ambient-factor}"
                                + " × {bundle-factor}"
                                + more
                                + ")",
                        (x, s) -> rating(x[0], s) / (x[1] * x[2] * k3))
                .where(where.and(s -> !s.gave(Quantity.FUSE)))
                .cost(1.5)
                .forward()
                .slip(
                        "needed-rating-multiplied",
                        "(next standard rating at or above {fuse-floor}) × {ambient-factor}"
                                + " × {bundle-factor}"
                                + more,
                        (x, s) -> rating(x[0], s) * x[1] * x[2] * k3);
    }

    private static double rating(final double floor, final Setting s) {
        return s.ratingFor(floor).orElse(Double.NaN);
    }

    private static double rowCarrying(final double[] x, final Setting s) {
        final CableTable table = s.table();
        for (final CableTable.Row row : table.rows()) {
            if (row.sectionMm2() <= table.largestSectionMm2() * (1 + 1e-9)
                    && carries(table, row, x[0], x[1])) {
                return row.sectionMm2() * MM2;
            }
        }
        return Double.NaN;
    }

    private static boolean carries(
            final CableTable table,
            final CableTable.Row row,
            final double amps,
            final double insulation) {
        return table.ampacity(row, insulation).orElse(0) >= amps * (1 - 1e-9);
    }

    private static String noRow(final double[] x, final Setting s) {
        final String amps = FigureText.roundedUp(x[0], Dimension.CURRENT);
        return REFUSALS.of("no-row", "table", s.table().id(), "amps", amps, "why", tooLarge(s));
    }

    /** The source of the factor for cable inside wall insulation. */
    public static Source inWallSource() {
        return new Source("BS 7671 523.9", wireworthy.facts.Provenance.MEMORY);
    }
}
