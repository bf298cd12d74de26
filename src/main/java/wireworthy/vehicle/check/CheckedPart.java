package wireworthy.vehicle.check;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wireworthy.marking.Mark;
import wireworthy.rules.Quantity;
import wireworthy.working.Assumed;
import wireworthy.working.Caution;
import wireworthy.working.Line;

/**
 * The supply, or the main fuse with its cable, with everything that can be worked of it.
 *
 * @param found values by quantity, in working order
 * @param marks of the builder's own figures
 * @param cautions worst first
 * @param notes what to say at single fields
 */
public record CheckedPart(
        List<Found> found,
        List<Mark> marks,
        List<Caution> cautions,
        List<FieldNote> notes,
        List<Line> working,
        List<Assumed> assumed) {
    /** A value, SI; empty where it can't be worked. */
    public OptionalDouble value(final Quantity quantity) {
        return found(quantity).map(Found::value).orElseGet(OptionalDouble::empty);
    }

    /** What keeps the energy of a day from being known, or what it goes by. */
    public List<String> ofEnergy() {
        return notes.stream()
                .filter(note -> note.where().equals(FieldNote.ENERGY))
                .map(FieldNote::text)
                .toList();
    }

    /** What was found for a quantity; empty where it was not asked. */
    public Optional<Found> found(final Quantity quantity) {
        return found.stream().filter(each -> each.quantity() == quantity).findFirst();
    }
}
