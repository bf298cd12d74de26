package wireworthy.practice;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;

/** An entry of a JSON file, with its place; what it does not hold as wanted is {@link Unfit}. */
public record Entry(JsonNode json, String pointer) {
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
            throw unfit("\"" + key + "\" is missing", "Add \"" + key + "\"");
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
            throw unfit("an object was expected here", "Write it in braces");
        }
        for (final Map.Entry<String, Entry> entry : entries()) {
            if (!keys.contains(entry.getKey())) {
                throw entry.getValue()
                        .unfit(
                                "\"" + shortened(entry.getKey()) + "\" is not known here",
                                "Here belong " + String.join(", ", sorted(keys)));
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
            throw unfit("a list with at least one entry was expected", "Write it in brackets");
        }
        if (json.size() > most) {
            throw unfit(
                    json.size() + " entries are too many, " + most + " are allowed",
                    "Take some out or put them into another file");
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
            throw unfit("a text was expected", "Write it in quotes");
        }
        if (json.stringValue().length() > most) {
            throw unfit("the text is longer than " + most + " characters", "Shorten it");
        }
        return json.stringValue();
    }

    /** A name of small letters, digits and hyphens. */
    public String id() {
        final String id = text(60);
        if (!ID.matcher(id).matches()) {
            throw unfit(
                    "\"" + id + "\" is no id",
                    "Use small letters, digits and hyphens, such as \"aisle-strips-drop\"");
        }
        return id;
    }

    public int whole(final int least, final int most) {
        if (!json.isInt() || json.intValue() < least || json.intValue() > most) {
            throw unfit(
                    "a whole number was expected",
                    "Write a number from " + least + " to " + most + ", without quotes");
        }
        return json.intValue();
    }

    public BigDecimal number() {
        if (!json.isNumber() || !handy(json.decimalValue())) {
            throw unfit(
                    "a number was expected",
                    "Write it without quotes and unit, with at most "
                            + MOST_DIGITS
                            + " digits before and after the point");
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
            throw unfit("true or false was expected", "Write true or false, without quotes");
        }
        return json.booleanValue();
    }

    public Unfit unfit(final String message, final String remedy) {
        return new Unfit(pointer, message, remedy);
    }

    static String shortened(final String text) {
        return text.length() <= 60 ? text : text.substring(0, 60) + "...";
    }
}
