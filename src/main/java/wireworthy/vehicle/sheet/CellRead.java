package wireworthy.vehicle.sheet;

import java.util.List;
import wireworthy.vehicle.Vehicle;

/**
 * A cell and what it was understood as.
 *
 * @param typed as it stands in the file
 * @param kept as it goes into the vehicle: with its unit
 * @param understood for people; empty where it can't be read
 * @param problem why it can't be read; empty where it can
 */
public record CellRead(
        Column column, String typed, String kept, String understood, String problem) {
    /** What goes into the vehicle, whether it could be read or not. */
    String text() {
        return kept.isEmpty()
                ? typed.substring(0, Math.min(typed.length(), Vehicle.LONGEST_TEXT))
                : kept;
    }

    /** The word a row has in a column of this kind; empty where it has none. */
    static String word(final List<CellRead> row, final Target.Word word) {
        return row.stream()
                .filter(cell -> cell.column().target() == word)
                .map(CellRead::kept)
                .findFirst()
                .orElse("");
    }
}
