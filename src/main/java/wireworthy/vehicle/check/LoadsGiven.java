package wireworthy.vehicle.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import wireworthy.rules.Dimension;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Load;
import wireworthy.vehicle.LoadEntry;
import wireworthy.vehicle.Understood;

/**
 * The loads of a circuit as a question lists them. One that can't be read leaves the current of the
 * circuit open: a sum without it would be too low, and so would the fuse.
 */
final class LoadsGiven {
    private static final double DAY = 24 * 3600.0;
    private static final List<LoadEntry> DRAWS =
            List.of(LoadEntry.POWER, LoadEntry.CURRENT, LoadEntry.RESISTANCE);

    private final List<FieldNote> notes = new ArrayList<>();
    private final List<String> names = new ArrayList<>();
    private boolean sound = true;

    private LoadsGiven() {}

    /** The loads, those of taps after the circuit's own; empty where any is not known. */
    static Optional<ArrayNode> of(final Circuit circuit, final List<Tap> taps, final Givens to) {
        final LoadsGiven loads = new LoadsGiven();
        final ArrayNode list = JsonNodeFactory.instance.arrayNode();
        final String where = circuit.isNetwork() ? "given.network.loads" : "given.loads";
        for (int i = 0; i < circuit.loads().size(); i++) {
            list.add(loads.load(where + "[" + i + "]", circuit.loads().get(i)));
        }
        taps.forEach(tap -> loads.tap(tap).ifPresent(list::add));
        if (list.isEmpty() && loads.sound) {
            loads.wrong(FieldNote.missing("given.loads", Said.of("loads.none")));
        }
        loads.notes.forEach(to::note);
        return loads.sound ? Optional.of(list) : Optional.empty();
    }

    /** The names under which a question has the loads of a circuit, in order. */
    static List<String> names(final Circuit circuit) {
        final LoadsGiven loads = new LoadsGiven();
        circuit.loads().forEach(load -> loads.name(load.name()));
        return List.copyOf(loads.names);
    }

    private void wrong(final FieldNote note) {
        notes.add(note);
        sound = false;
    }

    private ObjectNode load(final String where, final Load load) {
        final ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("name", named(where, load.name()));
        if (DRAWS.stream().noneMatch(load.entries()::has)) {
            wrong(FieldNote.missing(where + ".power", Said.of("loads.power")));
        }
        load.entries().typed().forEach((entry, text) -> entry(where, json, entry, text));
        return json;
    }

    private void entry(
            final String where, final ObjectNode json, final LoadEntry entry, final String text) {
        final String path = where + "." + entry.key();
        final Understood understood = Understood.of(entry.quantity(), text);
        if (understood instanceof Understood.Trouble trouble) {
            final FieldNote note = FieldNote.wrong(path, trouble.text());
            notes.add(note);
            sound &= entry == LoadEntry.MEASURED;
        } else if (entry == LoadEntry.HOURS_A_DAY) {
            hours(path, json, (Understood.Figure) understood);
        } else if (entry != LoadEntry.MEASURED) {
            once(path, json, entry, text);
        }
    }

    private void hours(final String path, final ObjectNode json, final Understood.Figure hours) {
        final double share = hours.read().value() / DAY;
        if (share > 1) {
            wrong(FieldNote.wrong(path, Said.of("loads.day")));
        } else {
            once(path, json, LoadEntry.SHARE_OF_TIME, Givens.exact(share, Dimension.SHARE));
        }
    }

    /** A share of the time may be said in one of two ways, not in both. */
    private void once(
            final String path, final ObjectNode json, final LoadEntry entry, final String text) {
        if (json.has(entry.key())) {
            wrong(FieldNote.wrong(path, Said.of("loads.both")));
        }
        json.put(entry.key(), text);
    }

    private String named(final String where, final String name) {
        if (names.contains(name)) {
            notes.add(FieldNote.wrong(where + ".name", Said.of("loads.twice", "name", name)));
        }
        return name(name);
    }

    /** A name that no other load of the list has. */
    private String name(final String name) {
        final String plain =
                name.isBlank() ? Said.of("loads.unnamed", "number", names.size() + 1) : name;
        String own = plain;
        for (int again = 2; names.contains(own); again++) {
            own = plain + " (" + again + ")";
        }
        names.add(own);
        return own;
    }

    private Optional<ObjectNode> tap(final Tap tap) {
        if (tap.current().isEmpty()) {
            wrong(FieldNote.missing("given.loads", Said.of("loads.tap", "name", tap.name())));
            return Optional.empty();
        }
        final ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("name", name(tap.name()));
        json.put("current", Givens.exact(tap.current().getAsDouble(), Dimension.CURRENT));
        tap.shareOfTime()
                .ifPresent(
                        share -> json.put("share-of-time", Givens.exact(share, Dimension.SHARE)));
        tap.startMultiple()
                .ifPresent(
                        times -> json.put("start-multiple", Givens.exact(times, Dimension.FACTOR)));
        return Optional.of(json);
    }
}
