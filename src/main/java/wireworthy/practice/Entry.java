package wireworthy.practice;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;
import wireworthy.texts.TextBundle;

/** An entry of a JSON file, with its place; what it does not hold as wanted is {@link Unfit}. */
public record Entry(JsonNode json, String pointer) {
    private static final TextBundle TEXTS = new TextBundle("entries");
    private static final int MOST_DIGITS = 12;
    private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

    public boolean has(final String key) {
        return json.has(key);
    }

    public boolean isObject() {
        return json.isObject();
    }

    public boolean isArray() {
        return json.isArray();
    }

    public boolean isText() {
        return json.isString();
    }

    /** The entry of this name. */
    public Entry at(final String key) {
        if (!json.has(key)) {
            throw refused("missing", "key", key);
        }
        return new Entry(json.get(key), pointer + "/" + key);
    }

    /** All entries, in the order of the file. */
    public List<Map.Entry<String, Entry>> entries() {
        return json.properties().stream()
                .map(e -> Map.entry(e.getKey(), new Entry(e.getValue(), child(e.getKey()))))
                .toList();
    }

    private String child(final String key) {
        return pointer + "/" + key.replace("~", "~0").replace("/", "~1");
    }

    /** Allows no other names than these. */
    public Entry only(final Set<String> keys) {
        if (!json.isObject()) {
            throw refused("object");
        }
        for (final Map.Entry<String, Entry> entry : entries()) {
            if (!keys.contains(entry.getKey())) {
                throw entry.getValue()
                        .refused(
                                "unknown",
                                "key",
                                shortened(entry.getKey()),
                                "keys",
                                String.join(", ", sorted(keys)));
            }
        }
        return this;
    }

    private static List<String> sorted(final Collection<String> keys) {
        return keys.stream().sorted().toList();
    }

    /** The things of a list. */
    public List<Entry> list(final int most) {
        if (!json.isArray() || json.isEmpty()) {
            throw refused("list");
        }
        if (json.size() > most) {
            throw refused("many", "entries", json.size(), "most", most);
        }
        final List<Entry> list = new ArrayList<>();
        for (int i = 0; i < json.size(); i++) {
            list.add(new Entry(json.get(i), pointer + "/" + i));
        }
        return list;
    }

    /** A text that is not blank. */
    public String text(final int most) {
        if (!json.isString() || json.stringValue().isBlank()) {
            throw refused("text");
        }
        if (json.stringValue().length() > most) {
            throw refused("long", "most", most);
        }
        return json.stringValue();
    }

    /** A name of small letters, digits and hyphens. */
    public String id() {
        final String id = text(60);
        if (!ID.matcher(id).matches()) {
            throw refused("id", "id", id);
        }
        return id;
    }

    public int whole(final int least, final int most) {
        if (!json.isInt() || json.intValue() < least || json.intValue() > most) {
            throw refused("whole", "least", least, "most", most);
        }
        return json.intValue();
    }

    public BigDecimal number() {
        if (!json.isNumber() || !handy(json.decimalValue())) {
            throw refused("number", "digits", MOST_DIGITS);
        }
        return json.decimalValue();
    }

    private static boolean handy(final BigDecimal number) {
        return Math.abs(number.scale()) <= MOST_DIGITS
                && number.precision() - number.scale() <= MOST_DIGITS;
    }

    /** True or false. */
    public boolean yes() {
        if (!json.isBoolean()) {
            throw refused("yes");
        }
        return json.booleanValue();
    }

    private Unfit refused(final String key, final Object... filling) {
        return unfit(TEXTS.of(key, filling), TEXTS.of(key + ".do", filling));
    }

    public Unfit unfit(final String message, final String remedy) {
        return new Unfit(pointer, message, remedy);
    }

    static String shortened(final String text) {
        return text.length() <= 60 ? text : text.substring(0, 60) + "...";
    }
}
