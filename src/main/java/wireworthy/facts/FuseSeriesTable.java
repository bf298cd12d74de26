package wireworthy.facts;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** The kinds of fuse a rating is picked from. */
public final class FuseSeriesTable {
    private FuseSeriesTable() {}

    /** Read when first asked for. */
    private static final class Read {
        static final List<FuseSeries> SERIES =
                FactTables.named("fuse-series").rows().stream()
                        .map(FuseSeriesTable::series)
                        .toList();
    }

    /**
     * One kind: blade, mini-blade, maxi-blade, strip-30, strip-51 or r10.
     *
     * @throws IllegalArgumentException if there is none of this name; the message lists the names
     */
    public static FuseSeries named(final String id) {
        final List<String> ids = all().stream().map(FuseSeries::id).toList();
        return all().get(ids.indexOf(UnknownName.unless(ids, "fuse series", id)));
    }

    /** All kinds, the one taken by default first. */
    public static List<FuseSeries> all() {
        return Read.SERIES;
    }

    /** The kinds a main fuse is sought in, in this order. */
    public static List<FuseSeries> risingToMain() {
        return Stream.of("blade", "maxi-blade", "strip-30", "strip-51")
                .map(FuseSeriesTable::named)
                .toList();
    }

    private static FuseSeries series(final List<String> row) {
        final FactTable table = FactTables.named("fuse-series");
        return new FuseSeries(
                table.cell(row, "Name"),
                table.cell(row, "Fuse"),
                new Source(table.cell(row, "Standard"), table.sourceOf(row).provenance()),
                numbers(table.cell(row, "Ratings, A")),
                numbers(table.cell(row, "Voltage ratings, V")),
                numbers(table.cell(row, "Breaking capacity, A")).stream()
                        .mapToDouble(Double::doubleValue)
                        .findFirst());
    }

    private static List<Double> numbers(final String cell) {
        return Arrays.stream(cell.split(" "))
                .filter(word -> !word.isEmpty())
                .map(Double::valueOf)
                .toList();
    }
}
