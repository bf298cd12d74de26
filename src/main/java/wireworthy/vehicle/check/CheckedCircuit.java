package wireworthy.vehicle.check;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wireworthy.marking.Mark;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Circuit;
import wireworthy.working.Assumed;
import wireworthy.working.Caution;
import wireworthy.working.Line;
import wireworthy.working.NetworkSolution;

/**
 * A circuit with everything that can be worked of it.
 *
 * @param found values by quantity, in working order
 * @param fuse which fuses fit
 * @param dropFromBoard V lost from the fuse board, the cables it is tapped off counted; empty where
 *     not known
 * @param dropLimit V that may be lost; empty where not known
 * @param warmDrop the same where the cable is as resistive as IEC 60228 class 5 allows and at 60
 *     degC; empty where not known
 * @param ways out of too much drop, counted from the fuse board
 * @param marks of the builder's own figures, in working order
 * @param cautions worst first
 * @param notes what to say at single fields
 * @param working its lines in order, told with their sources
 * @param assumed what was taken because nothing was typed
 * @param loads in the order of the circuit
 * @param network the voltages along the cable, where it feeds several places
 */
public record CheckedCircuit(
        Circuit circuit,
        List<Found> found,
        FuseWindow fuse,
        OptionalDouble dropFromBoard,
        OptionalDouble dropLimit,
        OptionalDouble warmDrop,
        List<Way> ways,
        List<Mark> marks,
        List<Caution> cautions,
        List<FieldNote> notes,
        List<Line> working,
        List<Assumed> assumed,
        List<CheckedLoad> loads,
        Optional<NetworkSolution> network) {
    /** A value of the circuit itself, SI; empty where it can't be worked. */
    public OptionalDouble value(final Quantity quantity) {
        return found(quantity).map(Found::value).orElseGet(OptionalDouble::empty);
    }

    /** Whether it could start a fire for want of a fuse where it is tapped off another. */
    public boolean fuseMissing() {
        return !circuit.feed().ownFuse()
                && cautions.stream().anyMatch(each -> each.id().equals(TapCautions.MISSING));
    }

    /** What was found for a quantity; empty where it was not asked. */
    public Optional<Found> found(final Quantity quantity) {
        return found.stream().filter(each -> each.quantity() == quantity).findFirst();
    }

    /** What to say at one field, by its path. */
    public List<FieldNote> notesAt(final String where) {
        return notes.stream().filter(note -> note.where().equals(where)).toList();
    }

    /** The mark of an own figure; empty where none was typed or it can't be marked. */
    public Optional<Mark> mark(final Quantity quantity) {
        return marks.stream().filter(mark -> mark.ref().quantity() == quantity).findFirst();
    }
}
