package wireworthy.vehicle.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import wireworthy.rules.Dimension;

/**
 * What the columns of a spreadsheet are taken for. It is guessed, shown and can be changed.
 *
 * @param headingRow index of the row with the headings; less than nothing where there is none
 * @param columns one for each column of the file
 */
public record Mapping(int headingRow, List<Column> columns, boolean decimalCommas) {
    private static final int LOOKED_AT = 25;

    public Mapping {
        columns = List.copyOf(columns);
    }

    /** The likeliest one. */
    public static Mapping guess(final Sheet sheet) {
        final int width = sheet.rows().stream().mapToInt(row -> row.cells().size()).max().orElse(0);
        final int headings = headings(sheet);
        final List<Column> columns =
                headings < 0
                        ? IntStream.range(0, width).mapToObj(i -> Column.unused(i, "")).toList()
                        : columns(new Under(sheet, headings), width);
        return new Mapping(
                headings,
                columns.stream().map(column -> share(sheet, headings, column)).toList(),
                Decimals.of(sheet) == Decimals.COMMA);
    }

    /** Shares none of which is above one are parts of one: 0.88, not 88 %. */
    private static Column share(final Sheet sheet, final int headings, final Column column) {
        final boolean asked =
                column.target().dimension() == Dimension.SHARE
                        && column.unitFrom() == Column.UnitFrom.ASSUMED;
        return asked && Decimals.partsOfOne(sheet, headings + 1, column.index())
                ? column.withUnit(SheetUnits.OF_ONE, Column.UnitFrom.ASSUMED)
                : column;
    }

    /** The row that is understood best as headings. */
    private static int headings(final Sheet sheet) {
        int best = -1;
        long most = 1;
        for (int i = 0; i < Math.min(LOOKED_AT, sheet.rows().size()); i++) {
            final List<String> cells = sheet.rows().get(i).cells();
            final long known =
                    cells.stream().filter(cell -> Headings.guess(0, cell).isPresent()).count();
            if (known > most) {
                most = known;
                best = i;
            }
        }
        return best;
    }

    private static List<Column> columns(final Under under, final int width) {
        final List<Column> columns = new ArrayList<>();
        final Set<Target> taken = new HashSet<>();
        for (int i = 0; i < width; i++) {
            final String heading = under.heading(i);
            final Optional<Column> guess =
                    Headings.guess(i, heading).filter(column -> !under.numbersRows(column));
            columns.add(
                    guess.filter(
                                    column ->
                                            column.target() == Target.Word.NOTHING
                                                    || taken.add(column.target()))
                            .orElse(Column.unused(i, heading)));
        }
        final List<Column> drawn = under.workedOut(columns);
        return taken.contains(Target.Word.CIRCUIT) ? drawn : namesAreCircuits(drawn);
    }

    /** Where only one column names things, a row is a circuit. */
    private static List<Column> namesAreCircuits(final List<Column> columns) {
        return columns.stream()
                .map(
                        column ->
                                column.target() == Target.Word.LOAD
                                        ? retargeted(column, Target.Word.CIRCUIT)
                                        : column)
                .toList();
    }

    static Column retargeted(final Column column, final Target target) {
        final String usual = Headings.unitOf(target.dimension());
        final boolean fits = Headings.isUnit(column.unit(), target.dimension());
        return new Column(
                column.index(),
                column.heading(),
                target,
                fits ? column.unit() : usual,
                fits ? column.unitFrom() : Column.UnitFrom.ASSUMED);
    }

    /** With a column taken for something else; another that had the same meaning loses it. */
    public Mapping with(final int index, final Target target) {
        return new Mapping(
                headingRow,
                columns.stream().map(column -> changed(column, index, target)).toList(),
                decimalCommas);
    }

    private static Column changed(final Column column, final int index, final Target target) {
        if (column.index() == index) {
            return retargeted(column, target);
        }
        return column.target().equals(target) && target != Target.Word.NOTHING
                ? Column.unused(column.index(), column.heading())
                : column;
    }

    /** With another unit for the cells of a column that have none. */
    public Mapping withUnit(final int index, final String unit) {
        final List<Column> changed = new ArrayList<>(columns);
        changed.set(index, changed.get(index).withUnit(unit, Column.UnitFrom.CHOSEN));
        return new Mapping(headingRow, changed, decimalCommas);
    }

    /** The column of a target. */
    Optional<Column> of(final Target target) {
        return columns.stream().filter(column -> column.target().equals(target)).findFirst();
    }
}
