package wireworthy.paper.schedule;

import java.util.OptionalDouble;
import wireworthy.paper.Block;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.check.CheckedPart;
import wireworthy.vehicle.check.CheckedVehicle;
import wireworthy.vehicle.check.FuseFault;

/** What all circuits come to together: main fuse and cable, short circuits, bank and charging. */
final class WholePart {
    private final CheckedVehicle checked;

    WholePart(final CheckedVehicle checked) {
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
        part(page, checked.main());
        new Workings(page).ways(checked.mainVolts().ways());
        faults(page);
        page.say("h2", Words.of("supply"));
        part(page, checked.supply());
    }

    private static String current(final OptionalDouble amps) {
        return Words.value(Quantity.CIRCUIT_CURRENT, amps);
    }

    private static void part(final Block page, final CheckedPart part) {
        final Workings workings = new Workings(page);
        workings.cautions(part.cautions());
        workings.working(part.working());
        workings.marks(part.marks());
        workings.assumed(part.assumed());
    }

    private void faults(final Block page) {
        page.say("h2", Words.of("faults")).say("p", "small", Words.of("faults.note"));
        final Table table = new Table(page, "faults.fuse", "faults.says");
        for (final FuseFault fault : checked.faults()) {
            final boolean main = fault.circuit().isEmpty();
            table.row(main ? Words.of("faults.main") : fault.circuit(), fault.text());
        }
    }
}
