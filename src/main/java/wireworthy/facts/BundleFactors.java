package wireworthy.facts;

import java.util.List;

/** What an ampacity is multiplied by for loaded conductors lying together. */
public final class BundleFactors {
    private BundleFactors() {}

    private record Band(double upTo, double factor, Source source) {}

    /** Read when first asked for. */
    private static final class Read {
        static final FactTable TABLE = FactTables.named("boat-bundling");
        static final List<Band> BANDS = TABLE.rows().stream().map(BundleFactors::band).toList();
    }

    /**
     * The factor for so many loaded conductors, out and back each counted: 1, 0.70, 0.60, 0.50 and
     * 0.40 for up to 2, 3, 6, 24 and more.
     *
     * @throws IllegalArgumentException if the count is not a number
     */
    public static double factor(final double conductors) {
        return bandOf(conductors).factor();
    }

    /** Where the table is published. */
    public static Source source() {
        return Read.TABLE.source();
    }

    /** Where the factor for so many conductors is published. */
    public static Source source(final double conductors) {
        return bandOf(conductors).source();
    }

    private static Band bandOf(final double conductors) {
        for (final Band band : Read.BANDS) {
            if (conductors <= band.upTo() * (1 + StandardSizes.SAME)) {
                return band;
            }
        }
        throw new IllegalArgumentException("Not a count of conductors: " + conductors);
    }

    private static Band band(final List<String> row) {
        final String upTo = Read.TABLE.cell(row, "Up to");
        return new Band(
                upTo.isEmpty() ? Double.POSITIVE_INFINITY : Double.parseDouble(upTo),
                Read.TABLE.number(row, "Multiply by"),
                Read.TABLE.sourceOf(row));
    }
}
