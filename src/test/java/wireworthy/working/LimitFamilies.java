package wireworthy.working;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.stream.Collectors;

/** Straight-line sums for what a cable may carry, its fuse and its size, in field units. */
final class LimitFamilies {
    private LimitFamilies() {}

    /** Table, insulation and what heat and company leave. */
    private record Shelter(OwnTables.Table table, double insulation, double factor) {}

    private static Shelter shelter(final Draw d) {
        final OwnTables.Table table = d.one(OwnTables.ALL);
        final double insulation = d.one(new ArrayList<>(table.amps().keySet()));
        d.says("cable-table", table.id());
        d.gives("insulation-temperature", insulation, "degC");
        double warmth = 1;
        if (d.maybe()) {
            warmth = OwnTables.warmth(insulation, d.given("ambient-temperature", 20, 60, "degC"));
        }
        if (!table.engine().isEmpty() && d.maybe()) {
            d.says("engine-space", "yes");
            warmth = Math.min(warmth, table.engine().getOrDefault(insulation, 1.0));
        }
        final int together = d.whole(1, 30);
        d.gives("bundled", together, "");
        final double company = OwnTables.company(together);
        double factor = warmth * company;
        if (d.maybe()) {
            d.says("in-thermal-insulation", "yes");
            factor *= 0.5;
        }
        d.expects("ambient-factor", warmth);
        d.expects("bundle-factor", company);
        return new Shelter(table, insulation, factor);
    }

    static void ampacity(final Draw d) {
        final Shelter s = shelter(d);
        final double[] sizes = s.table().mm2();
        final double mm2 = d.number(sizes[0], sizes[sizes.length - 1]);
        final double row = s.table().ampacity(mm2, s.insulation());
        d.gives("section", mm2, "mm2");
        d.expects("table-ampacity", row);
        d.expects("ampacity", row * s.factor());
        d.expects("fuse-ceiling", row * s.factor());
    }

    static void fuse(final Draw d) {
        ampacity(d);
        final double ceiling = d.expected().getOrDefault("fuse-ceiling", Double.NaN);
        final double amps = d.given("circuit-current", ceiling / 5, ceiling / 1.4, "A");
        final double[] series = series(d);
        final double fuse = OwnTables.next(series, 1.25 * amps);
        d.expects("fuse-floor", 1.25 * amps);
        d.expects("fuse", fuse <= ceiling ? fuse : Double.NaN);
    }

    private static double[] series(final Draw d) {
        return switch (d.whole(0, 3)) {
            case 0 -> named(d, "maxi-blade", OwnTables.MAXI);
            case 1 -> named(d, "strip-30", OwnTables.STRIP_30);
            case 2 -> named(d, "strip-51", OwnTables.STRIP_51);
            default -> OwnTables.BLADE;
        };
    }

    private static double[] named(final Draw d, final String id, final double[] series) {
        d.says("fuse-series", id);
        return series;
    }

    static void bareFuse(final Draw d) {
        final double amps = d.given("circuit-current", 0.5, 120, "A");
        final double margin = d.maybe() ? d.given("margin", 1, 1.6, "") : 1.25;
        d.expects("fuse", OwnTables.next(series(d), amps * margin));
    }

    static void standard(final Draw d) {
        final Shelter s = shelter(d);
        final double volts = d.one(12, 24, 48);
        d.gives("supply-voltage", volts, "V");
        final double amps = d.given("circuit-current", 0.5, 25, "A");
        final double loop = CableFamilies.loop(d);
        final double exact =
                CableFamilies.resistivity(d) * loop * amps / CableFamilies.limitVolts(d, volts);
        final double needed = OwnTables.nextInAny(1.25 * amps) / s.factor();
        final double hot = s.table().carrying(needed, s.insulation());
        double[] sizes = s.table().mm2();
        if (d.maybe()) {
            sizes = new double[] {1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50};
            d.lists(
                    "available-sections",
                    Arrays.stream(sizes)
                            .mapToObj(each -> "\"" + Draw.text(each) + " mm2\"")
                            .collect(Collectors.joining(", ", "[", "]")));
        }
        final double both = Math.max(exact, hot);
        d.expects("section-for-drop", exact);
        d.expects("ampacity-needed", needed);
        d.expects("section-for-ampacity", hot);
        d.expects(
                "standard-section", Double.isNaN(both) ? Double.NaN : OwnTables.next(sizes, both));
    }
}
