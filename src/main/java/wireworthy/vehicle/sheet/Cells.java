package wireworthy.vehicle.sheet;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import wireworthy.rules.Dimension;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Understood;
import wireworthy.vehicle.Vehicle;

/** Understands the cells of a spreadsheet by the column they stand in. */
final class Cells {
    private static final Pattern SPREADSHEET_ERROR = Pattern.compile("#[A-Z/0-9]+[!?]?|Err:\\d+");
    private static final Pattern NOTHING =
            Pattern.compile("[-–—]+|n/?a|none|\\?+", Pattern.CASE_INSENSITIVE);

    private static final Pattern BARE_NUMBER = Pattern.compile("[-+~≈]?[\\d.,'’\\s\u00a0]*\\d");
    private static final int MOST_KEPT = 20_000;

    private final Mapping mapping;
    private final Decimals decimals;

    /** Cells understood before: a spreadsheet says the same things over and over. */
    private final Map<String, CellRead> kept = new HashMap<>();

    Cells(final Mapping mapping, final Decimals decimals) {
        this.mapping = mapping;
        this.decimals = decimals;
    }

    /** All cells of a row that the mapping uses and that are not empty. */
    List<CellRead> of(final SheetRow row) {
        final List<CellRead> read = new ArrayList<>();
        for (final Column column : mapping.columns()) {
            final String typed = plain(row.cell(column.index()));
            if (column.target() != Target.Word.NOTHING && !typed.isEmpty()) {
                read.add(of(column, typed));
            }
        }
        return read;
    }

    /** Without the apostrophe that keeps a spreadsheet from working a cell; empty for a dash. */
    private static String plain(final String cell) {
        final String text = cell.startsWith("'") ? cell.substring(1).strip() : cell;
        return NOTHING.matcher(text).matches() ? "" : text;
    }

    private CellRead of(final Column column, final String typed) {
        if (SPREADSHEET_ERROR.matcher(typed).matches()) {
            return unread(column, typed, SheetTexts.of("cell.error"));
        }
        final int most = most(column.target());
        if (typed.length() > most) {
            return unread(column, typed, SheetTexts.of("cell.long", "most", most));
        }
        if (column.target() instanceof Target.Word) {
            return word(column, typed);
        }
        if (kept.size() > MOST_KEPT) {
            kept.clear();
        }
        return kept.computeIfAbsent(
                column.index() + ":" + typed, any -> figureOrName(column, typed));
    }

    private static int most(final Target target) {
        return target == Target.Word.NOTES ? Vehicle.LONGEST_NOTES : Vehicle.LONGEST_TEXT;
    }

    private static CellRead unread(final Column column, final String typed, final String why) {
        return new CellRead(column, typed, "", "", why);
    }

    private static CellRead word(final Column column, final String typed) {
        final String name = typed.replaceAll("\\s+", " ");
        return name.length() > Vehicle.LONGEST_NAME && column.target() != Target.Word.NOTES
                ? unread(column, typed, SheetTexts.of("cell.name", "most", Vehicle.LONGEST_NAME))
                : new CellRead(column, typed, name, name, "");
    }

    private CellRead figureOrName(final Column column, final String typed) {
        final Quantity quantity = quantity(column.target());
        final String kept =
                quantity.numeric() ? withUnit(column, decimals.plain(typed)) : yesOrNo(typed);
        final Understood understood = Understood.of(quantity, kept);
        return understood instanceof Understood.Trouble trouble
                ? new CellRead(column, typed, kept, "", trouble.text())
                : new CellRead(column, typed, kept, understood.text(), "");
    }

    private static Quantity quantity(final Target target) {
        if (target instanceof Target.Given given) {
            return given.quantity();
        }
        if (target instanceof Target.OfVehicle vehicle) {
            return vehicle.quantity();
        }
        return target instanceof Target.OfLoad load
                ? load.entry().quantity()
                : ((Target.Own) target).quantity();
    }

    /** With the unit of the column, unless the cell has one of its own. */
    private static String withUnit(final Column column, final String typed) {
        final boolean bare = BARE_NUMBER.matcher(typed).matches();
        if (bare && column.unit().equals(SheetUnits.OF_ONE)) {
            return percent(typed);
        }
        return bare && !column.unit().isEmpty() && !isPlain(column.target())
                ? typed + " " + column.unit()
                : typed;
    }

    private static String percent(final String typed) {
        try {
            final BigDecimal share = new BigDecimal(typed.replace(',', '.'));
            return share.movePointRight(2).stripTrailingZeros().toPlainString() + " %";
        } catch (final NumberFormatException e) {
            return typed;
        }
    }

    private static boolean isPlain(final Target target) {
        return target.dimension() == Dimension.COUNT || target.dimension() == Dimension.FACTOR;
    }

    private static String yesOrNo(final String typed) {
        return switch (typed.toLowerCase(Locale.ROOT)) {
            case "y", "true", "x", "1" -> "yes";
            case "n", "false", "0" -> "no";
            default -> typed;
        };
    }
}
