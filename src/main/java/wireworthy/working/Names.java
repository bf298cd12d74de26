package wireworthy.working;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import wireworthy.facts.CableTable;
import wireworthy.facts.CableTables;
import wireworthy.facts.FuseSeries;
import wireworthy.facts.FuseSeriesTable;
import wireworthy.rules.Quantity;

/** The closed lists of names a question may use. */
public final class Names {
    private static final int SHOWN = 40;

    private Names() {}

    /**
     * The name as the program knows it.
     *
     * @throws Unworkable where there is no such name; it says which there are
     */
    public static String of(final Quantity quantity, final String where, final String typed) {
        final String name = typed.strip().toLowerCase(Locale.ROOT).replace('_', '-');
        final List<String> known = known(quantity);
        if (!known.contains(name)) {
            throw new Unworkable(
                    where,
                    "\"" + shortened(typed) + "\" is not known here; write " + listed(known));
        }
        return name;
    }

    /** The names allowed for a quantity. */
    public static List<String> known(final Quantity quantity) {
        return switch (quantity) {
            case FUSE_SERIES -> FuseSeriesTable.all().stream().map(FuseSeries::id).toList();
            case CABLE_TABLE -> CableTables.all().stream().map(CableTable::id).toList();
            case RETURN -> List.of("own core", "chassis");
            case CONDUCTOR_METAL -> List.of("copper", "aluminium");
            case ENGINE_SPACE, IN_THERMAL_INSULATION -> List.of("yes", "no");
            default -> List.of();
        };
    }

    static String listed(final Collection<String> names) {
        final List<String> sorted = names.stream().toList();
        final String head =
                sorted.stream().limit(sorted.size() - 1L).collect(Collectors.joining(", "));
        final String last = sorted.get(sorted.size() - 1);
        return head.isEmpty() ? last : head + " or " + last;
    }

    static String shortened(final String text) {
        return text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "...";
    }

    /** A hint at the id most like this one. */
    static String nearest(final String id) {
        final String wanted = id.length() > SHOWN ? id.substring(0, SHOWN) : id;
        return Arrays.stream(Quantity.values())
                .map(Quantity::id)
                .filter(known -> Quantity.of(known).isPresent())
                .filter(known -> distance(wanted, known) <= Math.max(2, known.length() / 4))
                .min(java.util.Comparator.comparingInt(known -> distance(wanted, known)))
                .map(known -> "; is \"" + known + "\" meant?")
                .orElse("");
    }

    /** Levenshtein's distance: how many letters to change, add or take away. */
    private static int distance(final String a, final String b) {
        int[] row = new int[b.length() + 1];
        Arrays.setAll(row, i -> i);
        for (int i = 1; i <= a.length(); i++) {
            final int[] next = new int[b.length() + 1];
            next[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                final int change = row[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                next[j] = Math.min(change, Math.min(row[j], next[j - 1]) + 1);
            }
            row = next;
        }
        return row[b.length()];
    }
}
