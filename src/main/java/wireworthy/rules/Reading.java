package wireworthy.rules;

/** What a typed figure was understood to be: read, to be asked about, or not readable. */
public sealed interface Reading {

    /**
     * A figure with one meaning.
     *
     * @param value in SI; degrees Celsius for a temperature, the gauge number for a gauge
     * @param unit the unit as understood, in plain letters: "mA", "mm2", "ft in", "AWG", ""
     * @param text what was understood, for people: "250 mA (0.25 A)"
     * @param lastDigit the SI value of one unit in the last typed digit: 0.001 for "0.526 V", 1 for
     *     "120 V". A fraction counts as its decimal and a gauge as its area, each in three figures
     * @param significantDigits typed digits without leading zeros; trailing zeros count
     * @param unitTyped false where the unit was left out and the usual one taken
     */
    record Read(
            double value,
            String unit,
            String text,
            double lastDigit,
            int significantDigits,
            boolean unitTyped)
            implements Reading {
        /** The figure as people are shown it, never turned into other units: "850 mA". */
        public String inItsOwnUnit() {
            final int converted = text.indexOf(" (");
            return converted < 0 ? text : text.substring(0, converted);
        }
    }

    /** A figure with two meanings; {@code question} asks which was meant. */
    record Unclear(Read first, Read second, String question) implements Reading {}

    /** Not a figure of the wanted kind; {@code message} says why and what to write instead. */
    record Unreadable(String message) implements Reading {}
}
