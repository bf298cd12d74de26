package wireworthy.rules;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.DoubleStream;
import wireworthy.facts.CableTable;
import wireworthy.facts.FuseSeries;
import wireworthy.facts.FuseSeriesTable;

/**
 * The named choices of a question: which table, series, metal and way back hold. Part of the shape
 * of a question, so that a plan made for it needs no look-up by name.
 *
 * @param available the sections one can buy, mm2, rising; empty for the rows of the table
 * @param given the quantities the asker gave for the circuit
 */
public record Setting(
        CableTable table,
        FuseSeries series,
        boolean aluminium,
        boolean chassis,
        boolean engineSpace,
        boolean inThermalInsulation,
        List<Double> available,
        Set<Quantity> given) {

    /** Whether the asker gave it. */
    public boolean gave(final Quantity quantity) {
        return given.contains(quantity);
    }

    /** The sections on offer, m2, rising: those one can buy, else the usable rows of the table. */
    public double[] sizes() {
        final DoubleStream mm2 =
                available.isEmpty()
                        ? table.usableRows().stream().mapToDouble(CableTable.Row::sectionMm2)
                        : available.stream().mapToDouble(Double::doubleValue);
        return mm2.map(each -> each * Dimension.AREA.scale()).toArray();
    }

    /** Whether a cable is known that the fuse has to protect. */
    public boolean cableKnown() {
        return gave(Quantity.SECTION)
                || gave(Quantity.GAUGE)
                || gave(Quantity.DIAMETER)
                || gave(Quantity.AMPACITY)
                || gave(Quantity.TABLE_AMPACITY)
                || gave(Quantity.FUSE_CEILING);
    }

    /**
     * The next rating at or above a current, A: of the series given; where none was given, of
     * blades or else of the first larger series that reaches it.
     */
    public OptionalDouble ratingFor(final double amps) {
        final OptionalDouble own = series.atOrAbove(amps);
        return own.isPresent() || gave(Quantity.FUSE_SERIES) ? own : mainRatingFor(amps);
    }

    /** The next rating at or above a current, A, of the first series that reaches it. */
    public static OptionalDouble mainRatingFor(final double amps) {
        for (final FuseSeries each : FuseSeriesTable.risingToMain()) {
            final OptionalDouble rating = each.atOrAbove(amps);
            if (rating.isPresent()) {
                return rating;
            }
        }
        return OptionalDouble.empty();
    }
}
