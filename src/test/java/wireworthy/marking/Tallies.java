package wireworthy.marking;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;

/** How often things were so, and what was said where they were not as they should be. */
final class Tallies {
    /** What is counted. */
    enum Count {
        SINGLE("one slip, named first", false),
        SINGLE_RIGHT("one slip, marked right", true),
        SINGLE_ASKED("one slip in three figures, asked about first, then named", false),
        PAIR("two slips, said or settled by the line asked for", false),
        PAIR_TWICE("two slips over two problems", false),
        PAIR_THREE("two slips in three figures, said or settled", false),
        POINT("two slips, one of them the decimal point", false),
        POINT_LINE("the same where a line shows the first slip", false),
        POINT_TWICE("the decimal point over two problems", false),
        NO_SLIP("no slip in three figures, wrongly explained", true),
        NO_SLIP_FOUR("no slip in four figures, wrongly explained", true),
        NO_SLIP_LINE("no slip, wrongly explained at once or after a sound line", true),
        ROUNDED("three figures kept on the way, sound", false),
        DANGER("could start a fire, said first", false),
        LONG("explained in more than 45 words", true);

        private final String words;
        private final boolean fault;

        Count(final String words, final boolean fault) {
            this.words = words;
            this.fault = fault;
        }
    }

    private record Tally(int so, int of, List<String> faults) {}

    private final Map<Count, Tally> tallies = new EnumMap<>(Count.class);

    void add(final Count count, final boolean so, final Supplier<String> what) {
        final Tally old = tallies.getOrDefault(count, new Tally(0, 0, new ArrayList<>()));
        if (so == count.fault) {
            old.faults().add(what.get());
        }
        tallies.put(count, new Tally(old.so() + (so ? 1 : 0), old.of() + 1, old.faults()));
    }

    private Tally of(final Count count) {
        return tallies.getOrDefault(count, new Tally(0, 0, List.of()));
    }

    /** How many answers were looked at. */
    int looked(final Count count) {
        return of(count).of();
    }

    /** The share, from 0 to 1. */
    double share(final Count count) {
        return (double) of(count).so() / of(count).of();
    }

    /** Those that did not come out as they should, a line each. */
    String faults(final Count count) {
        return String.join("\n", of(count).faults());
    }

    String table() {
        final StringBuilder table = new StringBuilder();
        tallies.forEach((count, tally) -> table.append(row(count, tally)));
        return table.toString();
    }

    private static String row(final Count count, final Tally tally) {
        final double percent = 100.0 * tally.so() / tally.of();
        return String.format(
                Locale.ROOT,
                "%-60s %6d of %6d %7.2f %%%n",
                count.words,
                tally.so(),
                tally.of(),
                percent);
    }
}
