package wireworthy.window.check;

import static wireworthy.rules.Quantity.*;

import java.util.List;
import java.util.Optional;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.CablePlaces;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Load;
import wireworthy.vehicle.Stretch;
import wireworthy.vehicle.Vocabulary;

/** The entries of a cable that feeds several places in turn. */
final class NetworkEntries {
    /** What is asked of its fuse, the cable being told stretch by stretch. */
    static final List<Quantity> FUSED = List.of(FUSE);

    /** What is asked of every stretch. */
    static final List<Quantity> STRETCH = List.of(ONE_WAY_LENGTH, SECTION);

    /** What a cable that is told stretch by stretch has no use for. */
    private static final List<Quantity> OF_ONE_CABLE =
            List.of(FUSE, ONE_WAY_LENGTH, SECTION, RETURN, RESISTANCE, LOOP_LENGTH);

    private static final String WHERE = "given.network";

    private final VehicleModel model;
    private final int circuit;

    NetworkEntries(final VehicleModel model, final int circuit) {
        this.model = model;
        this.circuit = circuit;
    }

    /** What holds for all its stretches. */
    static List<Entry> moreOfCable(final EntryList entries) {
        return entries.others(Vocabulary.CIRCUIT, OF_ONE_CABLE);
    }

    Circuit circuit() {
        return model.now().circuits().get(circuit);
    }

    /** The places along it. */
    List<String> places() {
        return CablePlaces.of(circuit());
    }

    /** Where a stretch begins. */
    Entry from(final int stretch) {
        return word(
                stretchPath(stretch) + "from",
                "stretch.from",
                Lens.stretch(circuit, stretch).then(Stretch::from, Stretch::beginningAt));
    }

    /** The place at the end of a stretch. */
    Entry to(final int stretch) {
        return word(
                stretchPath(stretch) + "to",
                "stretch.to",
                Lens.stretch(circuit, stretch).then(Stretch::to, Stretch::endingAt));
    }

    /** Where a load is connected. */
    Entry at(final int load) {
        return word(
                loadPath(load) + ".at",
                "load.at",
                Lens.load(circuit, load).then(Load::at, Load::connectedAt));
    }

    private Entry word(final String where, final String key, final Lens<String> lens) {
        return new Entry(model, spot(), where, key, Optional.empty(), lens, Optional.empty());
    }

    private Spot spot() {
        return new Spot.OfCircuit(circuit);
    }

    private static String stretchPath(final int stretch) {
        return WHERE + ".stretches[" + stretch + "].";
    }

    private static String loadPath(final int load) {
        return WHERE + ".loads[" + load + "]";
    }

    /** Length, section and the like of a stretch. */
    List<Entry> of(final int stretch, final List<Quantity> quantities) {
        return quantities.stream()
                .map(
                        it ->
                                new Entry(
                                        model,
                                        spot(),
                                        stretchPath(stretch) + it.id(),
                                        it.id(),
                                        Optional.of(it),
                                        given(stretch, it),
                                        Optional.of(to(stretch).lens())))
                .toList();
    }

    /** What else may be known of a stretch. */
    List<Entry> more(final int stretch) {
        return of(
                stretch, Vocabulary.STRETCH.stream().filter(it -> !STRETCH.contains(it)).toList());
    }

    private Lens<String> given(final int stretch, final Quantity quantity) {
        return Lens.stretch(circuit, stretch)
                .then(
                        it -> it.given().text(quantity),
                        (Stretch it, String text) -> it.with(quantity, text));
    }

    /** What is said of the cable as a whole, of a stretch, of a load. */
    NoteLine whole() {
        return new NoteLine(model, spot(), WHERE);
    }

    NoteLine atStretch(final int stretch) {
        return new NoteLine(model, spot(), WHERE + ".stretches[" + stretch + "]");
    }

    NoteLine atLoad(final int load) {
        return new NoteLine(model, spot(), loadPath(load));
    }
}
