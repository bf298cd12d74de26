package wireworthy.vehicle.sheet;

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
        /** Nobody says; the usual one is taken, to be looked at before anything is built on it. */
        ASSUMED
    }

    static Column unused(final int index, final String heading) {
        return new Column(index, heading, Target.Word.NOTHING, "", UnitFrom.ASSUMED);
    }

    /** What the column is taken for, for people: "load power, in W as the heading says". */
    public String text() {
        if (unit.isEmpty()) {
            return target.words();
        }
        return target.words()
                + ", in "
                + unit
                + (unitFrom == UnitFrom.HEADING
                        ? " as the heading says"
                        : " where the cell names no unit: is that so?");
    }
}
