package wireworthy.window.figures;

import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.working.Telling;

/**
 * What one thing takes away.
 *
 * @param name what it is: "45 °C around it"
 * @param value the factor; 0 where nothing is left
 * @param left A after it and those before it
 * @param source where the factor is published
 */
record Factor(String name, double value, double left, String source) {
    String text() {
        return FigureText.number(value, Dimension.FACTOR, 3);
    }

    String leftAmps() {
        return Telling.exact(Quantity.AMPACITY, left);
    }
}
