package wireworthy.facts;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How much current cables may carry, by section and by insulation, before any lowering for company
 * or surroundings.
 *
 * @param insulationTemperatures the columns, in degC, ascending
 * @param rows by ascending section, the unusable ones among them
 * @param largestSectionMm2 the largest section one may choose by this table, in mm2; rows above it
 *     are data only
 * @param defaultInsulationTemperature the column taken unless another is given, in degC
 * @param byGauge whether the rows are AWG numbers, with the areas of ASTM B258
 * @param engineSpaceFactors by ascending insulation temperature; empty if the table has none
 */
public record CableTable(
        String id,
        String title,
        String scope,
        Source source,
        List<Double> insulationTemperatures,
        List<Row> rows,
        double largestSectionMm2,
        double defaultInsulationTemperature,
        boolean byGauge,
        List<EngineSpaceFactor> engineSpaceFactors) {

    /**
     * One section.
     *
     * @param label the section as it is sold: "2.5 mm2" or "12 AWG"
     * @param ampacities in A, one for each insulation temperature of the table
     */
    public record Row(double sectionMm2, String label, List<Double> ampacities, Source source) {
        public Row {
            ampacities = List.copyOf(ampacities);
        }
    }

    /** What an ampacity is multiplied by in an engine space, for one insulation rating in degC. */
    public record EngineSpaceFactor(double insulationTemperature, double factor, Source source) {}

    public CableTable {
        insulationTemperatures = List.copyOf(insulationTemperatures);
        rows = List.copyOf(rows);
        engineSpaceFactors = List.copyOf(engineSpaceFactors);
    }

    /** Its title in the language in use. */
    public String said() {
        return TableWords.of(title);
    }

    /** The rows one may choose by, up to {@link #largestSectionMm2}. */
    public List<Row> usableRows() {
        return rows.stream().filter(this::usable).toList();
    }

    /** The usable row at this section or next below it; none below the smallest. */
    public Optional<Row> rowFor(final double sectionMm2) {
        return rows.stream()
                .filter(row -> usable(row) && reaches(sectionMm2, row.sectionMm2()))
                .reduce((smaller, larger) -> larger);
    }

    /** Whether one may choose a cable of this section by the table: none thinner, none thicker. */
    public boolean holds(final double sectionMm2) {
        return reaches(largestSectionMm2, sectionMm2) && rowFor(sectionMm2).isPresent();
    }

    /** The column used for an insulation rated so many degC: its own or the next lower one. */
    public OptionalDouble insulationColumn(final double insulationTemperature) {
        return StandardSizes.atOrBelow(insulationTemperatures, insulationTemperature);
    }

    /** What a row may carry, in A, in the column used for the insulation; empty below all. */
    public OptionalDouble ampacity(final Row row, final double insulationTemperature) {
        final OptionalDouble column = insulationColumn(insulationTemperature);
        return column.isEmpty()
                ? column
                : OptionalDouble.of(
                        row.ampacities().get(insulationTemperatures.indexOf(column.getAsDouble())));
    }

    /** The table's own engine-space factor for the insulation, or that of the next lower rating. */
    public OptionalDouble engineSpaceFactor(final double insulationTemperature) {
        return engineSpace(insulationTemperature).stream()
                .mapToDouble(EngineSpaceFactor::factor)
                .findFirst();
    }

    /** As {@link #engineSpaceFactor}, with its source. */
    public Optional<EngineSpaceFactor> engineSpace(final double insulationTemperature) {
        return engineSpaceFactors.stream()
                .filter(each -> reaches(insulationTemperature, each.insulationTemperature()))
                .reduce((cooler, hotter) -> hotter);
    }

    private boolean usable(final Row row) {
        return reaches(largestSectionMm2, row.sectionMm2());
    }

    private static boolean reaches(final double size, final double mark) {
        return size >= mark || StandardSizes.same(size, mark);
    }
}
