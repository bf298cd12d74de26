package wireworthy.vehicle.sheet;

import java.util.List;

/**
 * One row of a spreadsheet.
 *
 * @param line of the file where it begins, from 1
 * @param cells without empty ones at the end
 * @param problem what is broken about the row itself; empty mostly
 */
public record SheetRow(int line, List<String> cells, String problem) {
    public SheetRow {
        cells = List.copyOf(cells);
    }

    /** The text of a cell; empty past the last one. */
    public String cell(final int column) {
        return column < cells.size() ? cells.get(column) : "";
    }

    public boolean isEmpty() {
        return cells.isEmpty();
    }
}
