package wireworthy.facts;

import java.util.List;
import java.util.OptionalDouble;

/** The highest resistance that flexible (class 5) plain copper cable may have. */
public final class Class5Copper {
    private static final String ID = "copper-resistance";
    private static final String SECTION = "Section, mm2";

    private Class5Copper() {}

    /**
     * The highest resistance of one conductor at 20 degC, in mohm/m.
     *
     * @param sectionMm2 a nominal section of the table; any other finds nothing
     */
    public static OptionalDouble maxResistanceMohmPerM(final double sectionMm2) {
        final FactTable table = FactTables.named(ID);
        return table.rows().stream()
                .filter(row -> StandardSizes.same(table.number(row, SECTION), sectionMm2))
                .mapToDouble(row -> table.number(row, "Class 5, plain copper, mohm/m"))
                .findFirst();
    }

    /** The nominal sections of the table, in mm2, ascending. */
    public static List<Double> sections() {
        final FactTable table = FactTables.named(ID);
        return table.rows().stream().map(row -> table.number(row, SECTION)).toList();
    }

    /** Where the table is published. */
    public static Source source() {
        return FactTables.named(ID).source();
    }
}
