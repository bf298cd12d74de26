package wireworthy.vehicle;

/**
 * One appliance, or several of one kind.
 *
 * @param name may be blank; two loads of a circuit may not share one
 * @param at the place of the network where it is connected; empty without a network
 */
public record Load(String name, String at, Entries<LoadEntry> entries) {
    /** A load of which only the name is known. */
    public static Load named(final String name) {
        return new Load(name, "", Entries.none());
    }

    /** Whether it is known how long a day it runs. */
    public boolean hoursKnown() {
        return entries.has(LoadEntry.HOURS_A_DAY) || entries.has(LoadEntry.SHARE_OF_TIME);
    }

    public Load with(final LoadEntry entry, final String text) {
        return new Load(name, at, entries.with(entry, text));
    }

    public Load renamed(final String other) {
        return new Load(other, at, entries);
    }

    public Load connectedAt(final String place) {
        return new Load(name, place, entries);
    }
}
