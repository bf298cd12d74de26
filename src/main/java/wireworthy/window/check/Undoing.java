package wireworthy.window.check;

import java.util.Optional;
import wireworthy.vehicle.Vehicle;

/** What an undo or a redo changed, in words. */
enum Undoing {
    UNDONE("undone"),
    REDONE("redone");

    private final String key;

    Undoing(final String key) {
        this.key = key;
    }

    /**
     * What was changed, and where.
     *
     * @param entry that stands otherwise now; empty where it is no entry of a form
     */
    String words(final Vehicle before, final Vehicle now, final Optional<Entry> entry) {
        final int more = now.circuits().size() - before.circuits().size();
        final Optional<Spot> first = Spot.firstOther(before, now);
        if (more != 0) {
            final Vehicle larger = more > 0 ? now : before;
            return text(
                    more > 0 ? ".back" : ".out",
                    "circuits",
                    circuits(larger, Math.abs(more), first));
        }
        final String where =
                entry.map(Entry::spot).or(() -> first).orElse(Spot.Fixed.WHOLE).title(now);
        return entry.map(it -> text(".entry", "where", where, "what", it.spoken()))
                .orElseGet(() -> text("", "where", where));
    }

    /** One by its name, several by their number. */
    private static String circuits(
            final Vehicle larger, final int count, final Optional<Spot> first) {
        return first.filter(it -> count == 1 && it instanceof Spot.OfCircuit)
                .map(it -> CheckTexts.of("undone.name", "name", it.title(larger)))
                .orElseGet(() -> CheckTexts.counted("sheet.circuits", count));
    }

    private String text(final String which, final Object... filling) {
        return CheckTexts.of(key + which, filling);
    }
}
