package wireworthy.vehicle.check;

/**
 * Something to say at one field of the form.
 *
 * @param where path of the entry, such as {@code given.section}, {@code given.loads[0].power},
 *     {@code given.network.stretches[1].one-way-length}, {@code answers.drop} or {@code fed-from}
 * @param kind what is the matter with it
 * @param text what is the matter and what to do, for people
 */
public record FieldNote(String where, Kind kind, String text) {
    /** Where it is said that a day's energy is not known, or goes by hours that nobody gave. */
    public static final String ENERGY = "daily-energy";

    /** Where the capacity of a battery is asked for. */
    public static final String BATTERY = "given.battery-capacity";

    /** What is the matter with an entry. */
    public enum Kind {
        /** Nothing is typed there and something would be needed. */
        MISSING,
        /** It can't be read, or contradicts another entry. */
        WRONG,
        /** It can be so, but is more likely to mean something else. */
        DOUBT
    }

    static FieldNote missing(final String where, final String text) {
        return new FieldNote(where, Kind.MISSING, text);
    }

    static FieldNote wrong(final String where, final String text) {
        return new FieldNote(where, Kind.WRONG, text);
    }

    static FieldNote doubt(final String where, final String text) {
        return new FieldNote(where, Kind.DOUBT, text);
    }
}
