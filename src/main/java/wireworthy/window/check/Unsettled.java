package wireworthy.window.check;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javafx.scene.Node;
import wireworthy.vehicle.check.CheckedVehicle;
import wireworthy.vehicle.check.FieldNote;

/**
 * What keeps a part from being worked whole: as long as it stands, nothing says that it is safe.
 *
 * @param all in the order of the parts
 */
record Unsettled(List<Differing.One> all) {
    static Unsettled of(final CheckedVehicle checked) {
        final List<Differing.One> all = new ArrayList<>();
        part(Spot.Fixed.SUPPLY, "spot.supply", checked.supply().notes()).forEach(all::add);
        part(Spot.Fixed.MAIN, "spot.main", checked.main().notes()).forEach(all::add);
        for (int i = 0; i < checked.circuits().size(); i++) {
            final Spot spot = new Spot.OfCircuit(i);
            final String name = checked.circuits().get(i).circuit().name();
            notes(spot, name, checked.circuits().get(i).notes(), Unsettled::ofCircuit)
                    .forEach(all::add);
        }
        return new Unsettled(List.copyOf(all));
    }

    private static Stream<Differing.One> part(
            final Spot.Fixed spot, final String key, final List<FieldNote> notes) {
        return notes(spot, CheckTexts.of(key), notes, State::isOpen);
    }

    private static Stream<Differing.One> notes(
            final Spot spot,
            final String name,
            final List<FieldNote> notes,
            final Predicate<FieldNote> wanted) {
        return notes.stream()
                .filter(wanted)
                .map(note -> new Differing.One(spot, name, note.text()));
    }

    /** An own figure that can't be checked yet leaves its circuit as safe as it is. */
    private static boolean ofCircuit(final FieldNote note) {
        return note.kind() != FieldNote.Kind.DOUBT && !note.where().startsWith(EntryList.OWN);
    }

    List<Node> drawn(final VehicleModel model) {
        return Differing.drawn(model, State.INCOMPLETE, "unsettled", all);
    }
}
