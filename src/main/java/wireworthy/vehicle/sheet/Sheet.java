package wireworthy.vehicle.sheet;

import java.util.List;

/**
 * A spreadsheet as it stands in a CSV file.
 *
 * @param encoding how its letters are written, for people
 * @param separator what stands between its cells
 * @param rows all of them, empty ones too
 */
public record Sheet(String encoding, char separator, List<SheetRow> rows) {
    public Sheet {
        rows = List.copyOf(rows);
    }
}
