package wireworthy.working;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Straight-line sums for loads, elements and batteries, in field units. */
final class LoadFamilies {
    private LoadFamilies() {}

    static void element(final Draw d) {
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
                        d.gives(id, value.getOrDefault(id, Double.NaN), unit.getOrDefault(id, ""));
                    } else {
                        d.expects(id, value.getOrDefault(id, Double.NaN));
                    }
                });
    }

    static void chargeAndEnergy(final Draw d) {
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

    static void converter(final Draw d) {
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

    static void loads(final Draw d) {
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

    static void resistances(final Draw d) {
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

    static void batteries(final Draw d) {
        final double volts = d.given("battery-voltage", 2, 14, "V");
        final double ampHours = d.given("battery-capacity", 20, 300, "Ah");
        final int string = d.whole(1, 4);
        final int rows = d.whole(1, 4);
        d.gives("in-series", string, "");
        d.gives("in-parallel", rows, "");
        final double percent = d.given("usable-share", 30, 100, "%");
        final double ohms = d.given("battery-resistance", 0.001, 0.05, "ohm");
        d.expects("internal-resistance", ohms * string / rows);
        final double sun = d.given("sun-hours", 1, 6, "h");
        final double watts = d.given("array-power", 50, 600, "W");
        final double arrives = d.given("array-efficiency", 50, 90, "%") / 100;
        d.expects("solar-energy", watts * sun * arrives);
        d.expects("bank-voltage", string * volts);
        d.expects("bank-capacity", rows * ampHours);
        d.expects("bank-energy", string * volts * rows * ampHours);
        d.expects("usable-energy", string * volts * rows * ampHours * percent / 100);
    }

    static void runtime(final Draw d) {
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

    static void charging(final Draw d) {
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
        final double solar = d.given("solar-energy", 100, 3000, "Wh");
        final double charged = volts * ampHours * share;
        d.expects("charge-energy", charged);
        d.expects("daily-balance", solar + charged - wattHours);
        d.expects("days-without-charge", volts * ampHours * share / wattHours);
    }
}
