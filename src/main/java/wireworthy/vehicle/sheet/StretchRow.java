package wireworthy.vehicle.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Entries;
import wireworthy.vehicle.Stretch;
import wireworthy.vehicle.Vehicle;
import wireworthy.vehicle.Vocabulary;

/** A row of a spreadsheet that tells a stretch of cable, and no load. */
final class StretchRow {
    private StretchRow() {}

    /** Whether a row is one: it says where a stretch begins or ends. */
    static boolean is(final List<CellRead> row) {
        return row.stream()
                .map(cell -> cell.column().target())
                .anyMatch(each -> each == Target.Word.FROM || each == Target.Word.TO);
    }

    /** Why the stretch of a row can't go into a circuit; empty where it can. */
    static Optional<String> trouble(final Circuit circuit, final List<CellRead> row) {
        return circuit.stretches().size() >= Vehicle.MOST_STRETCHES
                ? Optional.of(SheetTexts.of("row.stretches", "most", Vehicle.MOST_STRETCHES))
                : row.stream()
                        .map(cell -> cell.column().target())
                        .filter(each -> !ofStretch(each))
                        .map(each -> SheetTexts.of("row.no-such", "target", each.words()))
                        .findFirst();
    }

    private static boolean ofStretch(final Target target) {
        return target instanceof Target.Given given
                ? Vocabulary.STRETCH.contains(given.quantity())
                : target == Target.Word.CIRCUIT
                        || target instanceof Target.OfVehicle
                        || target == Target.Word.FROM
                        || target == Target.Word.TO;
    }

    /** A circuit with the stretch that a row tells. */
    static Circuit into(final Circuit circuit, final List<CellRead> row) {
        Stretch stretch =
                new Stretch(
                        CellRead.word(row, Target.Word.FROM),
                        CellRead.word(row, Target.Word.TO),
                        Entries.none());
        for (final CellRead cell : row) {
            if (cell.column().target() instanceof Target.Given given) {
                stretch = stretch.with(given.quantity(), cell.text());
            }
        }
        final List<Stretch> stretches = new ArrayList<>(circuit.stretches());
        stretches.add(stretch);
        return circuit.withStretches(stretches);
    }

    /** Whether a cell says of a load what only a stretch of cable has. */
    static boolean isAlone(final CellRead cell) {
        return cell.column().target() instanceof Target.Given given
                && !Vocabulary.CIRCUIT.contains(given.quantity());
    }
}
