package wireworthy.working;

/** Straight-line sums for cables, their drop and their source, in field units. */
final class CableFamilies {
    private static final double COPPER = 0.0172;

    private CableFamilies() {}

    /** Ohm mm2/m at a temperature, as given or as assumed. */
    static double resistivity(final Draw d) {
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

    static double section(final Draw d) {
        if (d.maybe()) {
            return d.given("section", 0.5, 70, "mm2");
        }
        final int gauge = d.whole(-3, 20);
        d.says("gauge", (gauge > 0 ? "" + gauge : (1 - gauge) + "/0") + " AWG");
        return OwnTables.gauge(gauge);
    }

    /** Metres out and back. */
    static double loop(final Draw d) {
        return switch (d.whole(0, 2)) {
            case 0 -> 2 * d.given("one-way-length", 0.5, 15, "m");
            case 1 -> 2 * 0.3048 * d.given("one-way-length", 2, 50, "ft");
            default -> d.given("loop-length", 1, 30, "m");
        };
    }

    static void cable(final Draw d) {
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

    static void starting(final Draw d) {
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

    static void chassis(final Draw d) {
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

    static void limit(final Draw d) {
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

    static double limitVolts(final Draw d, final double volts) {
        return switch (d.whole(0, 2)) {
            case 0 -> d.given("drop-limit", 1, 10, "%") / 100 * volts;
            case 1 -> d.given("drop-limit", 0.1, 1.5, "V");
            default -> 0.03 * volts;
        };
    }

    static void source(final Draw d) {
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

    static void conductor(final Draw d) {
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

    static void backward(final Draw d) {
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

    static void backwardElsewhere(final Draw d) {
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
