package wireworthy.vehicle.sheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.LoadEntry;

/**
 * What stands under the headings of a spreadsheet, where a heading alone has two meanings.
 *
 * @param headings index of the row with the headings
 */
record Under(Sheet sheet, int headings) {
    private static final Target COUNT = new Target.OfLoad(LoadEntry.COUNT);
    private static final Target POWER = new Target.OfLoad(LoadEntry.POWER);
    private static final Target CURRENT = new Target.OfLoad(LoadEntry.CURRENT);
    private static final Target OWN_CURRENT = new Target.Own(Quantity.CIRCUIT_CURRENT);

    private static final int LOOKED_AT = 100;
    private static final int FEWEST = 3;

    String heading(final int column) {
        return sheet.rows().get(headings).cell(column);
    }

    private List<SheetRow> rows() {
        return sheet.rows().stream()
                .skip(headings + 1L)
                .filter(row -> !row.isEmpty())
                .limit(LOOKED_AT)
                .toList();
    }

    /** Whether a column taken for a count only numbers the rows: 1, 2, 3 and so on. */
    boolean numbersRows(final Column column) {
        if (!column.target().equals(COUNT)) {
            return false;
        }
        final List<String> cells =
                rows().stream()
                        .map(row -> row.cell(column.index()).replaceAll("[.) ]+$", "").strip())
                        .filter(cell -> cell.matches("[0-9]+"))
                        .toList();
        return cells.size() >= FEWEST
                && IntStream.range(0, cells.size())
                        .allMatch(i -> cells.get(i).equals(String.valueOf(i + 1)));
    }

    /** A current beside a power in most rows is what the builder made of it. */
    List<Column> workedOut(final List<Column> columns) {
        final Optional<Column> power = of(columns, POWER);
        final Optional<Column> current = of(columns, CURRENT);
        if (power.isEmpty()
                || current.isEmpty()
                || of(columns, OWN_CURRENT).isPresent()
                || current.get().heading().equals(SheetWriter.heading(LoadEntry.CURRENT))
                || !mostlyBoth(power.get().index(), current.get().index())) {
            return columns;
        }
        return columns.stream()
                .map(
                        column ->
                                column.equals(current.get())
                                        ? Mapping.retargeted(column, OWN_CURRENT)
                                        : column)
                .toList();
    }

    private boolean mostlyBoth(final int power, final int current) {
        final long both =
                rows().stream().filter(row -> has(row, power) && has(row, current)).count();
        return 2 * both > rows().stream().filter(row -> has(row, current)).count();
    }

    private static boolean has(final SheetRow row, final int column) {
        return !row.cell(column).isBlank();
    }

    private static Optional<Column> of(final List<Column> columns, final Target target) {
        return columns.stream().filter(column -> column.target().equals(target)).findFirst();
    }
}
