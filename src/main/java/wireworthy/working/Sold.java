package wireworthy.working;

import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.rules.Setting;
import wireworthy.texts.TextBundle;

/** How a section is sold: by gauge where the table goes by gauge. */
public final class Sold {
    private static final TextBundle TEXTS = new TextBundle("working");

    private Sold() {}

    /** A result for people; what is bought as a size of cable is named as it is sold. */
    public static String result(final Setting setting, final Quantity quantity, final double si) {
        final boolean sold =
                quantity == Quantity.STANDARD_SECTION || quantity == Quantity.SECTION_FOR_AMPACITY;
        return sold ? text(setting, si) : Telling.result(quantity, si);
    }

    /** The section for people, such as "2.5 mm²" or "12 AWG (3.309 mm²)". */
    public static String text(final Setting setting, final double section) {
        if (Double.isNaN(section)) {
            return TEXTS.of("nothing-fits");
        }
        final String area = FigureText.of(section, Dimension.AREA, 4);
        final double mm2 = section / Dimension.AREA.scale();
        if (!setting.table().byGauge() || !setting.available().isEmpty()) {
            return area;
        }
        return setting.table().rowFor(mm2).map(row -> row.label() + " (" + area + ")").orElse(area);
    }
}
