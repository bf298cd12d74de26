package wireworthy.record;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** Settings as JSON. Unknown and mistyped entries are passed over, missing ones take defaults. */
final class SettingsText {
    // The bare reader and writer: binding records would add a tenth to the time the window takes.
    private static final JsonFactory JSON = new JsonFactory();

    private SettingsText() {}

    /**
     * Reads settings.
     *
     * @throws IOException if the text is no JSON object
     * @throws tools.jackson.core.JacksonException if the text is no JSON
     */
    static Settings parse(final byte[] text) throws IOException {
        final Map<String, Object> entries = entries(text);
        final LeftOff usual = Settings.DEFAULTS.leftOff();
        return new Settings(
                Settings.VERSION,
                entry(entries, "/dark", Settings.DEFAULTS.dark()),
                entry(entries, "/textSize", (double) Settings.DEFAULTS.textSize()).intValue(),
                new LeftOff(
                        entry(entries, "/place", usual.place()),
                        entry(entries, "/lesson", usual.lesson()),
                        entry(entries, "/screen", (double) usual.screen()).intValue(),
                        entry(entries, "/topic", usual.topic()),
                        entry(entries, "/problem", usual.problem()),
                        entry(entries, "/part", usual.part())),
                window(entries),
                SumsText.of(entries),
                entry(entries, "/person", Settings.DEFAULTS.person()),
                entry(entries, "/language", Settings.DEFAULTS.language()));
    }

    /** All figures, words and yes-or-noes of an object, under their JSON pointers. */
    private static Map<String, Object> entries(final byte[] text) throws IOException {
        final Map<String, Object> entries = new HashMap<>();
        try (JsonParser parser = JSON.createParser(ObjectReadContext.empty(), text)) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                throw new IOException("not a JSON object");
            }
            for (JsonToken it = parser.nextToken(); it != null; it = parser.nextToken()) {
                final String pointer = parser.streamReadContext().pathAsPointer().toString();
                if (it.isNumeric()) {
                    entries.put(pointer, parser.getDoubleValue());
                } else if (it.isBoolean()) {
                    entries.put(pointer, parser.getBooleanValue());
                } else if (it == JsonToken.VALUE_STRING) {
                    entries.put(pointer, parser.getString());
                }
            }
        }
        return entries;
    }

    @SuppressWarnings("unchecked") // The class of the value is that of the default.
    static <T> T entry(final Map<String, Object> entries, final String pointer, final T usual) {
        final Object value = entries.get(pointer);
        return usual.getClass().isInstance(value) ? (T) value : usual;
    }

    private static Optional<WindowBounds> window(final Map<String, Object> entries) {
        final boolean whole =
                Stream.of("/window/x", "/window/y", "/window/width", "/window/height")
                        .allMatch(it -> entries.get(it) instanceof Double);
        return whole
                ? Optional.of(
                        new WindowBounds(
                                entry(entries, "/window/x", 0.0),
                                entry(entries, "/window/y", 0.0),
                                entry(entries, "/window/width", 0.0),
                                entry(entries, "/window/height", 0.0),
                                entry(entries, "/window/maximised", false)))
                : Optional.empty();
    }

    /** Writes the settings. */
    static byte[] of(final Settings settings) {
        final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (JsonGenerator json = JSON.createGenerator(ObjectWriteContext.empty(), bytes)) {
            json.writeStartObject();
            json.writeNumberProperty("version", settings.version());
            json.writeBooleanProperty("dark", settings.dark());
            json.writeNumberProperty("textSize", settings.textSize());
            json.writeStringProperty("person", settings.person());
            json.writeStringProperty("language", settings.language());
            write(json, settings.leftOff());
            settings.window().ifPresent(it -> write(json, it));
            settings.chosen().ifPresent(it -> SumsText.write(json, it));
            json.writeEndObject();
        }
        return bytes.toByteArray();
    }

    private static void write(final JsonGenerator json, final LeftOff leftOff) {
        json.writeStringProperty("place", leftOff.place());
        json.writeStringProperty("lesson", leftOff.lesson());
        json.writeNumberProperty("screen", leftOff.screen());
        json.writeStringProperty("topic", leftOff.topic());
        json.writeStringProperty("problem", leftOff.problem());
        json.writeStringProperty("part", leftOff.part());
    }

    private static void write(final JsonGenerator json, final WindowBounds window) {
        json.writeObjectPropertyStart("window");
        json.writeNumberProperty("x", window.x());
        json.writeNumberProperty("y", window.y());
        json.writeNumberProperty("width", window.width());
        json.writeNumberProperty("height", window.height());
        json.writeBooleanProperty("maximised", window.maximised());
        json.writeEndObject();
    }
}
