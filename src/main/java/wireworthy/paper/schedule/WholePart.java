package wireworthy.paper.schedule;

import java.util.OptionalDouble;
import wireworthy.paper.Block;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.check.CheckedPart;
import wireworthy.vehicle.check.CheckedVehicle;
import wireworthy.vehicle.check.VoltsLost;

/** What all circuits come to together: main fuse and cable, short circuits, bank and charging. */
final class WholePart {
    private final CheckedVehicle checked;
    private final Common common;

    WholePart(final CheckedVehicle checked, final Common common) {
        this.common = common;
        this.checked = checked;
    }

    void into(final Block page) {
        page.say("h2", Words.of("main"));
        final String all = current(checked.totalCurrent());
        page.say(
                "p",
                Words.of("total", "all", all)
                        .replace("{together}", current(checked.simultaneousCurrent())));
        page.say("p", Words.of("circuit.window") + ": " + checked.mainFuse().text());
        part(page, Words.of("main"), checked.main());
        final VoltsLost lost = checked.mainVolts();
        new Workings(page, common).ways(lost.ways(), lost.drop(), lost.limit());
        new FaultPart(checked.faults()).into(page);
        page.say("h2", Words.of("supply"));
        checked.supply().ofEnergy().forEach(text -> page.say("p", text));
        part(page, Words.of("supply"), checked.supply());
    }

    private static String current(final OptionalDouble amps) {
        return Words.value(Quantity.CIRCUIT_CURRENT, amps);
    }

    private void part(final Block page, final String name, final CheckedPart part) {
        final Workings workings = new Workings(page, common);
        workings.cautions(part.cautions());
        workings.working(part.working());
        workings.marks(name, part.marks());
        workings.assumed(part.assumed());
    }
}
