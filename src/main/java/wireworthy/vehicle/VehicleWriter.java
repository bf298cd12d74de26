package wireworthy.vehicle;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.ObjectWriter;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import wireworthy.rules.Quantity;

/** A vehicle as JSON, in the words of the question format. The same vehicle gives the same text. */
public final class VehicleWriter {
    static final int VERSION = 1;

    private static final ObjectWriter JSON = JsonMapper.shared().writer().with(layout());

    private VehicleWriter() {}

    private static DefaultPrettyPrinter layout() {
        final DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        return new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines);
    }

    /** The text of the file. */
    public static String text(final Vehicle vehicle) {
        return JSON.writeValueAsString(json(vehicle)) + "\n";
    }

    private static ObjectNode json(final Vehicle vehicle) {
        final ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("wireworthy", "vehicle");
        json.put("version", VERSION);
        json.put("name", vehicle.name());
        unlessEmpty(json, "notes", vehicle.notes());
        part(json.putObject("supply"), vehicle.supply());
        part(json.putObject("main"), vehicle.main());
        final ArrayNode circuits = json.putArray("circuits");
        vehicle.circuits().forEach(circuit -> circuit(circuits.addObject(), circuit));
        return json;
    }

    private static void unlessEmpty(final ObjectNode json, final String key, final String text) {
        if (!text.isEmpty()) {
            json.put(key, text);
        }
    }

    private static void part(final ObjectNode json, final Part part) {
        entries(json.putObject("given"), part.given(), Quantity::id);
        if (!part.answers().typed().isEmpty()) {
            entries(json.putObject("answers"), part.answers(), Quantity::id);
        }
    }

    private static <K extends Enum<K>> void entries(
            final ObjectNode json, final Entries<K> entries, final Function<K, String> key) {
        for (final Map.Entry<K, String> entry : entries.typed().entrySet()) {
            if (entry.getKey() == Quantity.AVAILABLE_SECTIONS) {
                final ArrayNode list = json.putArray(key.apply(entry.getKey()));
                SectionList.written(entry.getValue()).forEach(list::add);
            } else {
                json.put(key.apply(entry.getKey()), entry.getValue());
            }
        }
    }

    private static void circuit(final ObjectNode json, final Circuit circuit) {
        json.put("name", circuit.name());
        unlessEmpty(json, "colour", circuit.colour());
        unlessEmpty(json, "never-with", circuit.neverWith());
        unlessEmpty(json, "notes", circuit.notes());
        if (circuit.feed().isTap()) {
            json.put("fed-from", circuit.feed().circuit());
            json.put("own-fuse", circuit.feed().ownFuse());
        }
        part(json, circuit.part());
        cable((ObjectNode) json.get("given"), circuit);
    }

    private static void cable(final ObjectNode given, final Circuit circuit) {
        if (circuit.isNetwork()) {
            final ObjectNode network = given.putObject("network");
            final ArrayNode stretches = network.putArray("stretches");
            circuit.stretches().forEach(stretch -> stretch(stretches.addObject(), stretch));
            loads(network, circuit.loads());
        } else if (!circuit.loads().isEmpty()) {
            loads(given, circuit.loads());
        }
    }

    private static void stretch(final ObjectNode json, final Stretch stretch) {
        json.put("from", stretch.from());
        json.put("to", stretch.to());
        entries(json, stretch.given(), Quantity::id);
    }

    private static void loads(final ObjectNode json, final List<Load> loads) {
        final ArrayNode list = json.putArray("loads");
        for (final Load load : loads) {
            final ObjectNode each = list.addObject();
            each.put("name", load.name());
            unlessEmpty(each, "at", load.at());
            entries(each, load.entries(), LoadEntry::key);
        }
    }
}
