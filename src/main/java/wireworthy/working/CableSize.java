package wireworthy.working;

import wireworthy.facts.CableTable;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;

/** A section as it is asked for in a shop: by gauge where its table goes by gauge. */
final class CableSize {
    private CableSize() {}

    /**
     * @param section SI, of a row of the table
     */
    static String text(final double section, final CableTable table) {
        final String area = FigureText.of(section, Dimension.AREA, 4);
        return table.byGauge()
                ? table.rowFor(section / Dimension.AREA.scale())
                        .map(row -> row.label() + " (" + area + ")")
                        .orElse(area)
                : area;
    }
}
