package wireworthy.rules;

/**
 * One way in which people get a line wrong.
 *
 * @param id id of the catalogue of slips
 * @param kind what is done wrong
 * @param formula the wrong sum in words; it applies only where all its quantities are at hand
 * @param arithmetic the wrong sum in SI
 */
public record Slip(String id, Kind kind, Formula formula, Arithmetic arithmetic) {
    /** The few kinds of slips. */
    public enum Kind {
        MISREADS_A_GIVEN,
        MISCALCULATES,
        SKIPS_A_LINE,
        PICKS_A_WRONG_ROW,
        ANSWERS_ANOTHER_LINE
    }

    Slip forLoad(final int load) {
        return new Slip(id, kind, formula.forLoad(load), arithmetic);
    }
}
