package wireworthy.working;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** Straight-line sums in field units for random questions of every topic. */
final class Families {
    private static final double COPPER = 0.0172;

    private static final Map<String, Consumer<Draw>> ALL = new LinkedHashMap<>();

    static {
        ALL.put("one element", Families::element);
        ALL.put("charge and energy", Families::chargeAndEnergy);
        ALL.put("converter", Families::converter);
        ALL.put("loads in a list", Families::loads);
        ALL.put("resistances side by side and in a string", Families::resistances);
        ALL.put("cable", Families::cable);
        ALL.put("motor starting", Families::starting);
        ALL.put("way back through the chassis", Families::chassis);
        ALL.put("section and run for a limit", Families::limit);
        ALL.put("fuse for a cable", Families::fuse);
        ALL.put("fuse before the cable", Families::bareFuse);
        ALL.put("ampacity", Families::ampacity);
        ALL.put("standard section", Families::standard);
        ALL.put("batteries", Families::batteries);
        ALL.put("runtime", Families::runtime);
        ALL.put("charging and need", Families::charging);
        ALL.put("source and short circuit", Families::source);
        ALL.put("conductor", Families::conductor);
        ALL.put("backward from the drop", Families::backward);
        ALL.put("backward from the rest", Families::backwardElsewhere);
    }

    private Families() {}

    static Map<String, Consumer<Draw>> all() {
        return ALL;
    }

    private static void element(final Draw d) {
        final double amps = d.number(0.1, 40);
        final double ohms = d.number(0.1, 35);
        final List<String> all = List.of("voltage", "current", "power", "resistance");
        final Map<String, Double> value =
                Map.of(
                        "current",
                        amps,
                        "resistance",
                        ohms,
                        "voltage",
                        amps * ohms,
                        "power",
                        amps * amps * ohms);
        final Map<String, String> unit =
                Map.of("current", "A", "resistance", "ohm", "voltage", "V", "power", "W");
        final String first = d.one(all);
        final String second = d.one(all.stream().filter(id -> !id.equals(first)).toList());
        all.forEach(
                id -> {
                    if (id.equals(first) || id.equals(second)) {
                        d.gives(id, value.get(id), unit.get(id));
                    } else {
                        d.expects(id, value.get(id));
                    }
                });
    }

    private static void chargeAndEnergy(final Draw d) {
        final double volts = d.given("voltage", 3, 60, "V");
        final double hours = d.given("time", 0.1, 60, "h");
        if (d.maybe()) {
            final double amps = d.given("current", 0.1, 60, "A");
            d.expects("charge", amps * hours);
            d.expects("energy", volts * amps * hours);
        } else {
            final double wattHours = d.given("energy", 5, 5000, "Wh");
            d.expects("charge", wattHours / volts);
            d.expects("power", wattHours / hours);
            d.expects("current", wattHours / hours / volts);
        }
    }

    private static void converter(final Draw d) {
        final double volts = d.given("supply-voltage", 11, 56, "V");
        final double watts = d.given("load-power", 50, 3000, "W");
        final double percent = d.given("efficiency", 70, 96, "%");
        final double margin = d.maybe() ? d.given("margin", 1.1, 1.6, "") : 1.25;
        final double amps = watts / volts * 100 / percent;
        d.expects("supply-current", amps);
        d.expects("circuit-current", amps);
        d.expects("fuse-floor", amps * margin);
        d.expects("main-fuse", OwnTables.nextInAny(amps * margin));
    }

    private static void loads(final Draw d) {
        final double volts = d.given("supply-voltage", 11, 56, "V");
        final List<String> list = new ArrayList<>();
        double total = 0;
        double energy = 0;
        double rise = 0;
        for (int i = d.whole(1, 7); i > 0; i--) {
            final double figure = d.number(2, 60);
            final boolean watts = d.maybe();
            final boolean ohms = !watts && d.maybe();
            String load = "\"name\": \"load " + i + "\", ";
            double amps = figure / (ohms ? 1 : volts);
            if (watts) {
                load += "\"power\": \"" + Draw.text(figure) + " W\"";
                if (d.maybe()) {
                    final double percent = d.number(70, 95);
                    load += ", \"efficiency\": \"" + Draw.text(percent) + " %\"";
                    amps *= 100 / percent;
                }
            } else if (ohms) {
                load += "\"resistance\": \"" + Draw.text(figure) + " ohm\"";
                amps = volts / figure;
            } else {
                load += "\"current\": \"" + Draw.text(figure) + " A\"";
                amps = figure;
            }
            final int count = d.maybe() ? d.whole(2, 9) : 1;
            load += count > 1 ? ", \"count\": " + count : "";
            double share = 100;
            if (d.maybe()) {
                share = d.number(5, 90);
                load += ", \"share-of-time\": \"" + Draw.text(share) + " %\"";
            }
            if (d.maybe()) {
                final double multiple = d.number(1.5, 8);
                load += ", \"start-multiple\": \"" + Draw.text(multiple) + "\"";
                rise = Math.max(rise, (multiple - 1) * amps);
            }
            list.add("{" + load + "}");
            total += count * amps;
            energy += 24 * volts * count * amps * share / 100;
        }
        d.lists("loads", list.toString());
        d.expects("circuit-current", total);
        d.expects("daily-energy", energy);
        d.expects("fuse-floor", 1.25 * total);
        d.expects("main-fuse", OwnTables.nextInAny(1.25 * total));
        if (rise > 0) {
            d.expects("start-current", total + rise);
        }
    }

    private static void resistances(final Draw d) {
        final double volts = d.given("supply-voltage", 5, 56, "V");
        final List<String> list = new ArrayList<>();
        double siemens = 0;
        double string = 0;
        for (int i = d.whole(2, 6); i > 0; i--) {
            final double ohms = d.number(0.5, 90);
            final int count = d.whole(1, 4);
            list.add(
                    "{\"name\": \""
                            + i
                            + "\", \"resistance\": \""
                            + Draw.text(ohms)
                            + " ohm\", \"count\": "
                            + count
                            + "}");
            siemens += count / ohms;
            string += count * ohms;
        }
        d.lists("loads", list.toString());
        d.expects("parallel-resistance", 1 / siemens);
        d.expects("series-resistance", string);
        d.expects("circuit-current", volts * siemens);
    }

    /** Ohm mm2/m at a temperature, as given or as assumed. */
    private static double resistivity(final Draw d) {
        final int kind = d.whole(0, 3);
        if (kind == 0) {
            return d.given("resistivity", 0.016, 0.03, "ohm mm2/m");
        }
        if (kind == 1) {
            final double warm = d.given("conductor-temperature", 25, 110, "degC");
            return COPPER * (1 + 0.00393 * (warm - 20));
        }
        if (kind == 2) {
            final double warm = d.maybe() ? d.given("conductor-temperature", 25, 110, "degC") : 20;
            d.says("conductor-metal", "aluminium");
            return 0.0282 * (1 + 0.00403 * (warm - 20));
        }
        return COPPER;
    }

    private static double section(final Draw d) {
        if (d.maybe()) {
            return d.given("section", 0.5, 70, "mm2");
        }
        final int gauge = d.whole(-3, 20);
        d.says("gauge", (gauge > 0 ? "" + gauge : (1 - gauge) + "/0") + " AWG");
        return OwnTables.gauge(gauge);
    }

    /** Metres out and back. */
    private static double loop(final Draw d) {
        return switch (d.whole(0, 2)) {
            case 0 -> 2 * d.given("one-way-length", 0.5, 15, "m");
            case 1 -> 2 * 0.3048 * d.given("one-way-length", 2, 50, "ft");
            default -> d.given("loop-length", 1, 30, "m");
        };
    }

    private static void cable(final Draw d) {
        final double volts = d.one(12, 12.6, 24, 25.2, 48);
        d.gives("supply-voltage", volts, "V");
        final double amps =
                d.maybe()
                        ? d.given("load-power", 5, 30, "W") / volts
                        : d.given("load-current", 0.2, 2, "A");
        final double loop = loop(d);
        final double perMetre;
        if (d.maybe()) {
            perMetre = resistivity(d) / section(d);
        } else {
            perMetre = d.given("resistance-per-length", 1, 30, "mohm/m") / 1000;
        }
        final double ohms = perMetre * loop;
        d.expects("loop-resistance", ohms);
        d.expects("drop", amps * ohms);
        d.expects("drop-percent", 100 * amps * ohms / volts);
        d.expects("voltage-at-load", volts - amps * ohms);
        d.expects("power-lost", amps * amps * ohms);
    }

    private static void starting(final Draw d) {
        final double volts = d.one(12, 24, 48);
        d.gives("supply-voltage", volts, "V");
        final double amps = d.given("load-current", 1, 8, "A");
        final double multiple = d.given("start-multiple", 2, 6, "");
        final double length = d.given("one-way-length", 0.5, 4, "m");
        final double mm2 = d.given("section", 1.5, 16, "mm2");
        final double ohms = COPPER * 2 * length / mm2;
        d.expects("start-current", multiple * amps);
        d.expects("voltage-at-load", volts - multiple * amps * ohms);
        d.expects("drop", amps * ohms);
        d.expects("fuse-floor", 1.25 * amps);
    }

    private static void chassis(final Draw d) {
        d.says("return", "chassis");
        final double amps = d.given("circuit-current", 1, 20, "A");
        final double length = d.given("one-way-length", 0.5, 9, "m");
        final double mm2 = d.given("section", 1, 16, "mm2");
        final double back = d.maybe() ? d.given("resistance", 0.001, 0.02, "ohm") : 0;
        final double ohms = COPPER * length / mm2 + back;
        d.expects("loop-length", length);
        d.expects("loop-resistance", ohms);
        d.expects("drop", amps * ohms);
        d.expects("power-lost", amps * amps * ohms);
    }

    private static void limit(final Draw d) {
        final double volts = d.one(12, 13.2, 24, 48);
        d.gives("supply-voltage", volts, "V");
        final double amps = d.given("circuit-current", 0.5, 60, "A");
        final double lost = limitVolts(d, volts);
        if (d.maybe()) {
            final double rho = resistivity(d);
            d.expects("section-for-drop", rho * loop(d) * amps / lost);
            d.expects("drop-limit", lost);
        } else if (d.maybe()) {
            final double rho = resistivity(d);
            d.expects("longest-run", lost * section(d) / (2 * rho * amps));
        } else {
            final double perMetre = d.given("resistance-per-length", 0.5, 30, "mohm/m") / 1000;
            d.expects("longest-run", lost / (2 * perMetre * amps));
        }
    }

    private static double limitVolts(final Draw d, final double volts) {
        return switch (d.whole(0, 2)) {
            case 0 -> d.given("drop-limit", 1, 10, "%") / 100 * volts;
            case 1 -> d.given("drop-limit", 0.1, 1.5, "V");
            default -> 0.03 * volts;
        };
    }

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
            warmth = Math.min(warmth, table.engine().get(insulation));
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

    private static void ampacity(final Draw d) {
        final Shelter s = shelter(d);
        final double[] sizes = s.table().mm2();
        final double mm2 = d.number(sizes[0], sizes[sizes.length - 1]);
        final double row = s.table().ampacity(mm2, s.insulation());
        d.gives("section", mm2, "mm2");
        d.expects("table-ampacity", row);
        d.expects("ampacity", row * s.factor());
        d.expects("fuse-ceiling", row * s.factor());
    }

    private static void fuse(final Draw d) {
        ampacity(d);
        final double ceiling = d.expected().get("fuse-ceiling");
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

    private static void bareFuse(final Draw d) {
        final double amps = d.given("circuit-current", 0.5, 120, "A");
        final double margin = d.maybe() ? d.given("margin", 1, 1.6, "") : 1.25;
        d.expects("fuse", OwnTables.next(series(d), amps * margin));
    }

    private static void standard(final Draw d) {
        final Shelter s = shelter(d);
        final double volts = d.one(12, 24, 48);
        d.gives("supply-voltage", volts, "V");
        final double amps = d.given("circuit-current", 0.5, 25, "A");
        final double loop = loop(d);
        final double exact = resistivity(d) * loop * amps / limitVolts(d, volts);
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

    private static void batteries(final Draw d) {
        final double volts = d.given("battery-voltage", 2, 14, "V");
        final double ampHours = d.given("battery-capacity", 20, 300, "Ah");
        final int string = d.whole(1, 4);
        final int rows = d.whole(1, 4);
        d.gives("in-series", string, "");
        d.gives("in-parallel", rows, "");
        final double percent = d.given("usable-share", 30, 100, "%");
        d.expects("bank-voltage", string * volts);
        d.expects("bank-capacity", rows * ampHours);
        d.expects("bank-energy", string * volts * rows * ampHours);
        d.expects("usable-energy", string * volts * rows * ampHours * percent / 100);
    }

    private static void runtime(final Draw d) {
        final double ampHours = d.given("battery-capacity", 20, 300, "Ah");
        final int rows = d.whole(1, 3);
        d.gives("in-parallel", rows, "");
        final double share = d.maybe() ? d.given("usable-share", 30, 90, "%") / 100 : 1;
        if (d.maybe()) {
            final double amps = d.given("circuit-current", 0.3, 40, "A");
            d.expects("runtime", rows * ampHours * share / amps);
            return;
        }
        final double volts = d.given("battery-voltage", 6, 14, "V");
        final double watts = d.given("load-power", 5, 900, "W");
        final double eta = d.maybe() ? d.given("efficiency", 70, 95, "%") / 100 : 1;
        d.expects("runtime", rows * ampHours * volts * share * eta / watts);
    }

    private static void charging(final Draw d) {
        final double ampHours = d.given("bank-capacity", 40, 600, "Ah");
        final double share = d.given("usable-share", 20, 90, "%") / 100;
        final double amps = d.given("charge-current", 3, 60, "A");
        final double eta = d.given("charge-efficiency", 70, 98, "%") / 100;
        final double volts = d.given("bank-voltage", 12, 52, "V");
        final double wattHours = d.given("daily-energy", 100, 5000, "Wh");
        final double days = d.given("days-of-reserve", 1, 5, "");
        final double sun = d.given("sun-hours", 1, 6, "h");
        final double array = d.given("array-efficiency", 50, 90, "%") / 100;
        d.expects("charge-time", ampHours * share / amps / eta);
        d.expects("capacity-needed", wattHours * days / share / volts);
        d.expects("array-power", wattHours / sun / array);
    }

    private static void source(final Draw d) {
        final double volts = d.given("supply-voltage", 11, 56, "V");
        final double inner = d.given("internal-resistance", 0.005, 0.02, "ohm");
        final double mm2 = d.given("section", 4, 35, "mm2");
        final double length = d.given("one-way-length", 0.5, 3, "m");
        final double amps = d.given("circuit-current", 5, 80, "A");
        final double fault = volts / (inner + 2 * COPPER * length / mm2);
        final double k = 226 * Math.sqrt(Math.log((234.5 + 160) / (234.5 + 105)));
        final double seconds = Math.pow(k * mm2 / fault, 2);
        d.expects("short-circuit-current", fault);
        d.expects("terminal-voltage", volts - amps * inner);
        d.expects("adiabatic-k", k);
        d.expects("adiabatic-time", seconds <= 5 ? seconds : Double.NaN);
    }

    private static void conductor(final Draw d) {
        if (d.maybe()) {
            final int strands = d.whole(1, 130);
            final double mm = d.given("diameter", 0.1, 0.5, "mm");
            d.gives("strands", strands, "");
            d.expects("section", strands * Math.PI * mm * mm / 4);
            d.expects("resistance-per-length", 1000 * COPPER / (strands * Math.PI * mm * mm / 4));
        } else {
            final double mm2 = d.given("section", 0.25, 100, "mm2");
            int gauge = 24;
            while (OwnTables.gauge(gauge) < mm2 * (1 - 1e-9)) {
                gauge--;
            }
            d.expects("gauge", gauge);
            d.expects("diameter", Math.sqrt(4 * mm2 / Math.PI));
        }
    }

    private static void backward(final Draw d) {
        final double amps = d.given("circuit-current", 1, 40, "A");
        final double lost = d.given("drop", 0.05, 1, "V");
        d.expects("loop-resistance", lost / amps);
        d.expects("power-lost", lost * amps);
        if (d.maybe()) {
            final double rho = d.given("resistivity", 0.016, 0.03, "ohm mm2/m");
            final double mm2 = d.given("section", 1, 35, "mm2");
            d.expects("loop-length", lost / amps * mm2 / rho);
            d.expects("one-way-length", lost / amps * mm2 / rho / 2);
        } else {
            final double metres = d.given("one-way-length", 1, 15, "m");
            final double rho = d.given("resistivity", 0.016, 0.03, "ohm mm2/m");
            d.expects("section", rho * 2 * metres * amps / lost);
        }
    }

    private static void backwardElsewhere(final Draw d) {
        final double floor = d.given("fuse-floor", 3, 40, "A");
        final double margin = d.given("margin", 1.1, 1.5, "");
        d.expects("circuit-current", floor / margin);
        final double percent = d.given("drop-percent", 0.5, 9, "%");
        final double volts = d.given("supply-voltage", 11, 50, "V");
        d.expects("drop", percent / 100 * volts);
        d.expects("voltage-at-load", volts * (1 - percent / 100));
        final double usable = d.given("usable-energy", 100, 3000, "Wh");
        final double share = d.given("usable-share", 30, 90, "%") / 100;
        d.expects("bank-energy", usable / share);
        final double amps = d.given("ampacity", 5, 60, "A");
        final double k1 = d.given("ambient-factor", 0.5, 0.95, "");
        final double k2 = d.given("bundle-factor", 0.5, 1, "");
        d.expects("table-ampacity", amps / k1 / k2);
    }
}
