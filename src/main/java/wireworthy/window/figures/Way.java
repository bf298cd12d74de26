package wireworthy.window.figures;

import wireworthy.facts.StandardSizes;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.working.Telling;

/**
 * One way to lay the circuit.
 *
 * @param name "a shorter run"
 * @param change what it takes: "3.37 m one way"
 * @param drop V
 * @param share of the supply
 * @param limit V
 * @param copper m3, section times length out and back, of all circuits together
 */
record Way(String name, String change, double drop, double share, double limit, double copper) {
    boolean within() {
        return drop <= limit * (1 + StandardSizes.SAME);
    }

    String dropVolts() {
        return Telling.result(Quantity.DROP, drop);
    }

    String percent() {
        return Telling.result(Quantity.DROP_PERCENT, share);
    }

    /** In mm2 times m. */
    String copperNumber() {
        return FigureText.number(copper, Dimension.AREA, 3);
    }

    String copperText() {
        return FigureTexts.of("ways.copper.of", "copper", copperNumber());
    }

    String words() {
        return FigureTexts.of(
                within() ? "way.within" : "way.past",
                "way",
                Told.capital(name),
                "change",
                change,
                "drop",
                dropVolts(),
                "percent",
                percent(),
                "copper",
                copperText());
    }
}
