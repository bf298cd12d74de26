package wireworthy.window.check;

import static wireworthy.rules.Quantity.ONE_WAY_LENGTH;
import static wireworthy.rules.Quantity.SECTION;

import java.util.List;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.LoadEntry;

/** A cable told stretch by stretch, typed as in the form. */
final class SeveralPlaces {
    private final VehicleModel model;
    private final int circuit;
    private final NetworkEntries entries;

    private SeveralPlaces(final VehicleModel model, final int circuit) {
        this.model = model;
        this.circuit = circuit;
        entries = new NetworkEntries(model, circuit);
    }

    /** The aisle strips of the example: a line that branches, with a ring. */
    static void at(final VehicleModel model, final int circuit) {
        new SeveralPlaces(model, circuit).typed();
    }

    private void typed() {
        model.choose(new Spot.OfCircuit(circuit));
        model.addStretch(circuit);
        entries.to(0).type("door");
        stretch(0, "4 m", "1.5 mm2");
        model.addStretch(circuit);
        entries.to(1).type("bench");
        stretch(1, "3 m", "1.5 mm2");
        model.addStretch(circuit);
        entries.from(2).type("door");
        entries.to(2).type("desk");
        stretch(2, "2 m", "1 mm2");
        model.addStretch(circuit);
        entries.from(3).type("desk");
        entries.to(3).type("bench");
        stretch(3, "2.5 m", "1 mm2");
        load("fan", "bench", LoadEntry.CURRENT, "1.8 A");
        load("till", "desk", LoadEntry.POWER, "36 W");
    }

    private void stretch(final int index, final String length, final String section) {
        entry(index, ONE_WAY_LENGTH).type(length);
        entry(index, SECTION).type(section);
    }

    private Entry entry(final int index, final Quantity quantity) {
        return entries.of(index, List.of(quantity)).get(0);
    }

    private void load(
            final String name, final String place, final LoadEntry draw, final String text) {
        model.addLoad(circuit);
        final int last = model.now().circuits().get(circuit).loads().size() - 1;
        EntryList.loadName(model, circuit, last).type(name);
        entries.at(last).type(place);
        EntryList.ofLoad(model, circuit, last, draw).type(text);
    }
}
