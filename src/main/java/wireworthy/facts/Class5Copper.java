package wireworthy.facts;

import java.util.List;
import java.util.OptionalDouble;

/** The highest resistance that flexible (class 5) plain copper cable may have. */
public final class Class5Copper {
    private Class5Copper() {}

    private record Row(double sectionMm2, double mohmPerM) {}

    /** Read when first asked for. */
    private static final class Read {
        static final FactTable TABLE = FactTables.named("copper-resistance");
        static final List<Row> ROWS = TABLE.rows().stream().map(Class5Copper::row).toList();
    }

    /**
     * The highest resistance of one conductor at 20 degC, in mohm/m.
     *
     * @param sectionMm2 a nominal section of the table; any other finds nothing
     */
    public static OptionalDouble maxResistanceMohmPerM(final double sectionMm2) {
        return Read.ROWS.stream()
                .filter(row -> StandardSizes.same(row.sectionMm2(), sectionMm2))
                .mapToDouble(Row::mohmPerM)
                .findFirst();
    }

    /** The nominal sections of the table, in mm2, ascending. */
    public static List<Double> sections() {
        return Read.ROWS.stream().map(Row::sectionMm2).toList();
    }

    /** Where the table is published. */
    public static Source source() {
        return Read.TABLE.source();
    }

    private static Row row(final List<String> cells) {
        return new Row(
                Read.TABLE.number(cells, "Section, mm2"),
                Read.TABLE.number(cells, "Class 5, plain copper, mohm/m"));
    }
}
