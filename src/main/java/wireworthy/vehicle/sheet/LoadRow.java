package wireworthy.vehicle.sheet;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Feed;
import wireworthy.vehicle.Load;
import wireworthy.vehicle.LoadEntry;

/** A row of a spreadsheet that tells a load, and what is given for its circuit. */
final class LoadRow {
    private static final Set<LoadEntry> DRAWS =
            Set.of(LoadEntry.POWER, LoadEntry.CURRENT, LoadEntry.RESISTANCE);

    private static final Set<String> NO = Set.of("no", "n", "nein", "0", "false");

    private static final Target CURRENT = new Target.OfLoad(LoadEntry.CURRENT);
    private static final Target OWN_CURRENT = new Target.Own(Quantity.CIRCUIT_CURRENT);

    private LoadRow() {}

    /** A circuit with what a row says of it and of its load. */
    static Circuit into(final Circuit circuit, final List<CellRead> read, final String loadName) {
        Circuit filled = circuit;
        Load load = Load.named(loadName);
        for (final CellRead cell : drawn(read)) {
            final Target target = cell.column().target();
            final String text = cell.text();
            if (target instanceof Target.OfLoad of) {
                load = load.with(of.entry(), text);
            } else if (target == Target.Word.AT) {
                load = load.connectedAt(text);
            } else if (target instanceof Target.Given given) {
                filled = filled.withGiven(given.quantity(), text);
            } else if (target instanceof Target.Own own) {
                filled = filled.withAnswer(own.quantity(), text);
            } else if (target == Target.Word.COLOUR) {
                filled = filled.withColour(text);
            } else if (target == Target.Word.NEVER_WITH) {
                filled = filled.withNeverWith(text);
            } else if (target == Target.Word.FED_FROM) {
                filled = filled.fedFrom(new Feed(text, hasOwnFuse(read)));
            }
        }
        return load.entries().typed().isEmpty() ? filled : filled.plus(load);
    }

    /** Without a word of one there is none: that is the case to look out for. */
    private static boolean hasOwnFuse(final List<CellRead> read) {
        final String said = CellRead.word(read, Target.Word.OWN_FUSE).toLowerCase(Locale.ROOT);
        return !said.isEmpty() && !NO.contains(said);
    }

    /** A current that was worked out beside a power in most rows is what is known in this one. */
    private static List<CellRead> drawn(final List<CellRead> read) {
        return read.stream().anyMatch(LoadRow::draws)
                ? read
                : read.stream().map(LoadRow::current).toList();
    }

    private static boolean draws(final CellRead cell) {
        return cell.column().target() instanceof Target.OfLoad of && DRAWS.contains(of.entry());
    }

    private static CellRead current(final CellRead cell) {
        final Column column = cell.column();
        final boolean asHeaded =
                column.target().equals(OWN_CURRENT)
                        && cell.problem().isEmpty()
                        && Headings.guess(column.index(), column.heading())
                                .filter(guess -> guess.target().equals(CURRENT))
                                .isPresent();
        return asHeaded
                ? new CellRead(
                        Mapping.retargeted(column, CURRENT),
                        cell.typed(),
                        cell.kept(),
                        cell.understood(),
                        "")
                : cell;
    }
}
