package wireworthy.vehicle.sheet;

import java.util.regex.Pattern;

/**
 * How a file writes its numbers. A cell alone can't always tell: "1,234" is one or a thousand; the
 * other cells do.
 */
enum Decimals {
    POINT,
    COMMA,
    /** No cell tells; what has two meanings is asked about. */
    UNKNOWN;

    private static final Pattern DECIMAL_COMMA =
            Pattern.compile("[-+]?(\\d+,(\\d{1,2}|\\d{4,})|0,\\d+|\\d{1,3}(\\.\\d{3})+,\\d+)\\D*");
    private static final Pattern DECIMAL_POINT =
            Pattern.compile(
                    "[-+]?(\\d+\\.(\\d{1,2}|\\d{4,})|0\\.\\d+|\\d{1,3}(,\\d{3})+\\.\\d+)\\D*");
    private static final Pattern COMMA_GROUPS =
            Pattern.compile("([-+]?\\d{1,3}(,\\d{3})+)(\\D.*)?");
    private static final Pattern POINT_GROUPS =
            Pattern.compile("([-+]?\\d{1,3}(\\.\\d{3})+)(\\D.*)?");
    private static final Pattern PART_OF_ONE = Pattern.compile("0[.,]\\d+|1([.,]0+)?|0");
    private static final int ENOUGH = 2000;

    /** Whether the cells of a column that are numbers are parts of one, and not all 0 or 1. */
    static boolean partsOfOne(final Sheet sheet, final int from, final int column) {
        boolean some = false;
        for (final SheetRow row : sheet.rows().subList(from, sheet.rows().size())) {
            final String cell = row.cell(column);
            if (!cell.isEmpty() && !PART_OF_ONE.matcher(cell).matches()) {
                return false;
            }
            some |= cell.length() > 1;
        }
        return some;
    }

    /** What the cells of a file tell. */
    static Decimals of(final Sheet sheet) {
        int commas = 0;
        int points = 0;
        for (final SheetRow row : sheet.rows().subList(0, Math.min(ENOUGH, sheet.rows().size()))) {
            for (final String cell : row.cells()) {
                commas += DECIMAL_COMMA.matcher(cell).matches() ? 1 : 0;
                points += DECIMAL_POINT.matcher(cell).matches() ? 1 : 0;
            }
        }
        if (commas == points) {
            return UNKNOWN;
        }
        return commas > points ? COMMA : POINT;
    }

    /** The cell with its thousands marks taken out, where the file tells which they are. */
    String plain(final String cell) {
        return switch (this) {
            case POINT -> COMMA_GROUPS.matcher(cell).matches() ? cell.replace(",", "") : cell;
            case COMMA -> comma(cell);
            case UNKNOWN -> cell;
        };
    }

    private static String comma(final String cell) {
        final String whole = POINT_GROUPS.matcher(cell).matches() ? cell.replace(".", "") : cell;
        final boolean threeDigits = COMMA_GROUPS.matcher(whole).matches();
        return threeDigits ? whole.replace(',', '.') : whole;
    }
}
