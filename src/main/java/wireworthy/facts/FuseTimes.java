package wireworthy.facts;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How long one kind of fuse holds an overload: limits set at a few shares of its rating. A fuse
 * opens sooner the more it carries, so between two rows the longest time is that of the lower share
 * and the shortest that of the higher one.
 *
 * @param rows by rising share; empty where only the maker's data sheet says
 */
public record FuseTimes(Source source, List<Row> rows) {
    private static final String TABLE = "fuse-time-current";

    public FuseTimes {
        rows = List.copyOf(rows);
    }

    /**
     * The limits at one share of the rating.
     *
     * @param share of the rating, 1 at the rating itself
     * @param shortest s; empty where none is set
     * @param longest s; empty where the fuse need not open
     */
    public record Row(double share, OptionalDouble shortest, OptionalDouble longest) {}

    /** Those of a {@linkplain FuseSeries#id() fuse series}. */
    public static FuseTimes of(final String series) {
        final FactTable table = FactTables.named(TABLE);
        final List<Row> rows =
                table.rows().stream()
                        .filter(row -> table.cell(row, "Fuse").equals(title(series)))
                        .map(row -> row(table, row))
                        .sorted(Comparator.comparingDouble(Row::share))
                        .toList();
        return new FuseTimes(table.source(), rows);
    }

    private static String title(final String series) {
        return switch (series) {
            case "blade", "mini-blade" -> "Blade fuse, regular and mini";
            case "maxi-blade" -> "Blade fuse, maxi";
            case "strip-30", "strip-51" -> "Bolt-in strip fuse, 30 and 51 mm";
            default -> "";
        };
    }

    private static Row row(final FactTable table, final List<String> row) {
        return new Row(
                table.number(row, "Share of its rating, %") / 100,
                seconds(table.cell(row, "Shortest time, s")),
                seconds(table.cell(row, "Longest time, s")));
    }

    private static OptionalDouble seconds(final String cell) {
        return cell.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(Double.parseDouble(cell));
    }

    /** The longest time at so many times the rating, s; empty where it need not open at all. */
    public OptionalDouble longest(final double share) {
        return rows.stream()
                .filter(row -> row.share() <= share * (1 + StandardSizes.SAME))
                .reduce((lower, higher) -> higher)
                .map(Row::longest)
                .orElseGet(OptionalDouble::empty);
    }

    /** The shortest time at so many times the rating, s; empty past the last row. */
    public OptionalDouble shortest(final double share) {
        return rows.stream()
                .filter(row -> row.share() >= share * (1 - StandardSizes.SAME))
                .findFirst()
                .map(Row::shortest)
                .orElseGet(OptionalDouble::empty);
    }
}
