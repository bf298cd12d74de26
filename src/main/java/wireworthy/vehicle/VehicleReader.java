package wireworthy.vehicle;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import wireworthy.practice.Entry;
import wireworthy.practice.Located;
import wireworthy.practice.Unfit;
import wireworthy.rules.Quantity;

/**
 * Reads a vehicle from JSON. What does not belong there is refused with its line, so that nothing
 * is lost when the file is written again; texts are kept as they are, readable or not.
 */
public final class VehicleReader {
    private static final String NAME = "name";
    private static final String NOTES = "notes";
    private static final String GIVEN = "given";
    private static final String ANSWERS = "answers";
    private static final String LOADS = "loads";
    private static final String NETWORK = "network";
    private static final Set<String> PART = Set.of(GIVEN, ANSWERS);

    private VehicleReader() {}

    /**
     * Reads a text.
     *
     * @param file name of the file, for what is said of it
     */
    public static VehicleRead read(final String file, final String text) {
        try {
            final Located json = Located.parse(text);
            return read(file, json);
        } catch (final JacksonException e) {
            return new VehicleRead.Refused(
                    file,
                    Located.lineOf(e),
                    "this is not JSON as it should be: " + e.getOriginalMessage(),
                    "Look here and just before for a missing comma, quote or bracket");
        }
    }

    private static VehicleRead read(final String file, final Located json) {
        try {
            return new VehicleRead.Whole(vehicle(json.root()));
        } catch (final Unfit e) {
            return new VehicleRead.Refused(file, json.line(e.pointer()), e.what(), e.remedy());
        }
    }

    private static Vehicle vehicle(final Entry root) {
        ours(root);
        root.only(Set.of("wireworthy", "version", NAME, NOTES, "supply", "main", "circuits"));
        final List<Circuit> circuits = new ArrayList<>();
        for (final Entry circuit : list(root, "circuits", Vehicle.MOST_CIRCUITS)) {
            circuits.add(circuit(circuit.only(circuitEntries())));
        }
        return new Vehicle(
                text(root, NAME, Vehicle.LONGEST_NAME),
                text(root, NOTES, Vehicle.LONGEST_NOTES),
                part(root, "supply", Vocabulary.SUPPLY),
                part(root, "main", Vocabulary.MAIN),
                circuits);
    }

    private static void ours(final Entry root) {
        if (!root.isObject() || !"vehicle".equals(text(root, "wireworthy", Vehicle.LONGEST_NAME))) {
            throw root.unfit(
                    "this is no vehicle of this program",
                    "A vehicle begins with \"wireworthy\": \"vehicle\"");
        }
        final Entry version = root.at("version");
        if (version.whole(1, Integer.MAX_VALUE) > VehicleWriter.VERSION) {
            throw version.unfit(
                    "a newer version of the program wrote this file; it was left as it is",
                    "Open it with that version; this one reads version " + VehicleWriter.VERSION);
        }
    }

    private static Set<String> circuitEntries() {
        final Set<String> keys = new HashSet<>(PART);
        keys.addAll(Set.of(NAME, "colour", "never-with", NOTES, "fed-from", "own-fuse"));
        return keys;
    }

    private static Circuit circuit(final Entry json) {
        final Optional<Entry> given = child(json, GIVEN);
        final Optional<Entry> network = given.flatMap(entry -> child(entry, NETWORK));
        network.ifPresent(entry -> entry.only(Set.of("stretches", LOADS)));
        return new Circuit(
                text(json, NAME, Vehicle.LONGEST_NAME),
                text(json, "colour", Vehicle.LONGEST_NAME),
                text(json, "never-with", Vehicle.LONGEST_NAME),
                text(json, NOTES, Vehicle.LONGEST_NOTES),
                feed(json),
                new Part(
                        quantities(json, GIVEN, Vocabulary.CIRCUIT, Set.of(LOADS, NETWORK)),
                        answers(json)),
                loads(network.or(() -> given), network.isPresent()),
                network.map(VehicleReader::stretches).orElse(List.of()));
    }

    private static Feed feed(final Entry json) {
        final String circuit = text(json, "fed-from", Vehicle.LONGEST_NAME);
        return circuit.isBlank()
                ? Feed.BOARD
                : new Feed(circuit, child(json, "own-fuse").map(Entry::yes).orElse(false));
    }

    private static Part part(final Entry root, final String key, final List<Quantity> allowed) {
        return child(root, key)
                .map(entry -> entry.only(PART))
                .map(entry -> new Part(quantities(entry, GIVEN, allowed, Set.of()), answers(entry)))
                .orElse(Part.EMPTY);
    }

    private static Entries<Quantity> answers(final Entry json) {
        final List<Quantity> numeric =
                List.of(Quantity.values()).stream().filter(Quantity::numeric).toList();
        return quantities(json, ANSWERS, numeric, Set.of());
    }

    private static Entries<Quantity> quantities(
            final Entry json,
            final String key,
            final List<Quantity> allowed,
            final Set<String> besides) {
        return child(json, key)
                .map(entry -> entries(entry, allowed, Quantity::id, besides))
                .orElseGet(Entries::none);
    }

    /** The texts under the keys allowed; nothing else may stand there but what is named besides. */
    private static <K extends Enum<K>> Entries<K> entries(
            final Entry json,
            final List<K> allowed,
            final Function<K, String> key,
            final Set<String> besides) {
        final Set<String> keys = new LinkedHashSet<>(besides);
        allowed.forEach(each -> keys.add(key.apply(each)));
        json.only(keys);
        final Map<K, String> typed = new TreeMap<>();
        for (final K each : allowed) {
            child(json, key.apply(each))
                    .ifPresent(
                            entry ->
                                    typed.put(
                                            each,
                                            each == Quantity.AVAILABLE_SECTIONS
                                                    ? sections(entry)
                                                    : typed(entry)));
        }
        return new Entries<>(typed);
    }

    private static List<Stretch> stretches(final Entry network) {
        return list(network, "stretches", Vehicle.MOST_STRETCHES).stream()
                .map(
                        entry ->
                                new Stretch(
                                        text(entry, "from", Vehicle.LONGEST_NAME),
                                        text(entry, "to", Vehicle.LONGEST_NAME),
                                        entries(
                                                entry,
                                                Vocabulary.STRETCH,
                                                Quantity::id,
                                                Set.of("from", "to"))))
                .toList();
    }

    private static List<Load> loads(final Optional<Entry> json, final boolean network) {
        final Set<String> besides = network ? Set.of(NAME, "at") : Set.of(NAME);
        return json.map(entry -> list(entry, LOADS, Vehicle.MOST_LOADS)).orElse(List.of()).stream()
                .map(
                        load ->
                                new Load(
                                        text(load, NAME, Vehicle.LONGEST_NAME),
                                        text(load, "at", Vehicle.LONGEST_NAME),
                                        entries(
                                                load,
                                                List.of(LoadEntry.values()),
                                                LoadEntry::key,
                                                besides)))
                .toList();
    }

    private static Optional<Entry> child(final Entry json, final String key) {
        return json.has(key) ? Optional.of(json.at(key)) : Optional.empty();
    }

    private static List<Entry> list(final Entry json, final String key, final int most) {
        return child(json, key)
                .filter(entry -> !entry.isArray() || !entry.json().isEmpty())
                .map(entry -> entry.list(most))
                .orElse(List.of());
    }

    private static String text(final Entry json, final String key, final int most) {
        return child(json, key).map(entry -> typed(entry, most)).orElse("");
    }

    private static String sections(final Entry entry) {
        if (!entry.isArray()) {
            return typed(entry);
        }
        final String text =
                SectionList.typed(
                        entry.list(Vehicle.MOST_SECTIONS).stream()
                                .map(VehicleReader::typed)
                                .toList());
        return shortEnough(entry, text, Vehicle.LONGEST_TEXT);
    }

    private static String typed(final Entry entry) {
        return typed(entry, Vehicle.LONGEST_TEXT);
    }

    /** A text, a number or yes and no, as the question format allows them. */
    private static String typed(final Entry entry, final int most) {
        final JsonNode json = entry.json();
        final String text = json.isBoolean() ? (json.booleanValue() ? "yes" : "no") : plain(entry);
        return shortEnough(entry, text, most);
    }

    private static String shortEnough(final Entry entry, final String text, final int most) {
        if (text.length() > most) {
            throw entry.unfit("the text is longer than " + most + " characters", "Shorten it");
        }
        return text;
    }

    private static String plain(final Entry entry) {
        if (!entry.json().isString() && !entry.json().isNumber()) {
            throw entry.unfit("a text was expected", "Write it in quotes");
        }
        return entry.json().asString();
    }
}
