package wireworthy.vehicle.sheet;

import java.util.List;
import java.util.Locale;

/**
 * A column of a spreadsheet and what it is taken for.
 *
 * @param heading as it stands in the file; empty without headings
 * @param unit taken where a cell has none; empty for words and plain numbers
 * @param unitFrom where that unit comes from
 */
public record Column(int index, String heading, Target target, String unit, UnitFrom unitFrom) {
    /** Where the unit of cells without one comes from. */
    public enum UnitFrom {
        HEADING,
        /** The person who looked at it. */
        CHOSEN,
        /** Nobody says; the usual one is taken, to be looked at before anything is built on it. */
        ASSUMED
    }

    static Column unused(final int index, final String heading) {
        return new Column(index, heading, Target.Word.NOTHING, "", UnitFrom.ASSUMED);
    }

    /** What the column is taken for, for people: "load power, in W as the heading says". */
    public String text() {
        return unit.isEmpty()
                ? target.words()
                : SheetTexts.of(
                        "in." + unitFrom.name().toLowerCase(Locale.ROOT),
                        "target",
                        target.words(),
                        "unit",
                        unitWords(unit));
    }

    /** A unit as it is called. */
    public static String unitWords(final String unit) {
        return unit.equals(SheetUnits.OF_ONE) ? SheetTexts.of("of-one") : unit;
    }

    /** The units its cells may be in where they name none; none for words and plain numbers. */
    public List<String> units() {
        return SheetUnits.of(target.dimension());
    }

    Column withUnit(final String other, final UnitFrom from) {
        return new Column(index, heading, target, other, from);
    }
}
