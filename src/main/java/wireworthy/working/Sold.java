package wireworthy.working;

import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Setting;

/** How a section is sold: by gauge where the table goes by gauge. */
public final class Sold {
    private Sold() {}

    /** The section for people, such as "2.5 mm²" or "12 AWG (3.309 mm²)". */
    public static String text(final Setting setting, final double section) {
        if (Double.isNaN(section)) {
            return "nothing fits";
        }
        final String area = FigureText.of(section, Dimension.AREA, 4);
        final double mm2 = section / Dimension.AREA.scale();
        if (!setting.table().byGauge() || !setting.available().isEmpty()) {
            return area;
        }
        return setting.table().rowFor(mm2).map(row -> row.label() + " (" + area + ")").orElse(area);
    }
}
