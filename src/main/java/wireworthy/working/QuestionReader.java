package wireworthy.working;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import wireworthy.rules.Dimension;
import wireworthy.rules.FiguresRead;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;

/** Reads a question in the question format; each thing wrong is named with its path. */
public final class QuestionReader {
    private static final int MOST_LOADS = 60;
    private static final int MOST_SECTIONS = 100;
    private static final int LONGEST_NAME = 120;

    private static final FiguresRead FIGURES = new FiguresRead();

    /** What may be said of a load of a list, by its key. */
    public static final Map<String, Quantity> LOAD_KEYS =
            Map.of(
                    "power", Quantity.LOAD_POWER,
                    "current", Quantity.LOAD_CURRENT,
                    "resistance", Quantity.RESISTANCE,
                    "count", Quantity.LOAD_COUNT,
                    "efficiency", Quantity.EFFICIENCY,
                    "start-multiple", Quantity.START_MULTIPLE,
                    "share-of-time", Quantity.SHARE_OF_TIME);

    private final Map<Ref, Reading.Read> figures = new LinkedHashMap<>();
    private final Map<Quantity, String> names = new LinkedHashMap<>();
    private final List<String> loads = new ArrayList<>();
    private final List<Double> available = new ArrayList<>();

    private QuestionReader() {}

    /**
     * Reads one question.
     *
     * @throws Unworkable naming the path of what can't be read
     */
    public static Question read(final JsonNode json) {
        if (!json.isObject()) {
            throw new Unworkable("", "a question is an object with \"given\" and \"find\"");
        }
        only(json, "", Set.of("given", "find", "answers"));
        final QuestionReader reader = new QuestionReader();
        reader.given(required(json, "given"));
        final List<Quantity> find = find(required(json, "find"));
        return new Question(
                reader.figures, reader.names, reader.loads, reader.available, find, answers(json));
    }

    static JsonNode required(final JsonNode json, final String key) {
        if (!json.has(key)) {
            throw new Unworkable(key, "\"" + key + "\" is missing");
        }
        return json.get(key);
    }

    static void only(final JsonNode json, final String path, final Set<String> keys) {
        json.propertyNames()
                .forEach(
                        key -> {
                            if (!keys.contains(key)) {
                                throw new Unworkable(
                                        path.isEmpty() ? key : path + "." + key,
                                        "no such entry; here belong " + Names.listed(keys));
                            }
                        });
    }

    private void given(final JsonNode given) {
        if (!given.isObject()) {
            throw new Unworkable("given", "\"given\" is an object of quantities");
        }
        for (final Map.Entry<String, JsonNode> entry : given.properties()) {
            entry("given." + entry.getKey(), entry.getValue());
        }
    }

    private void entry(final String where, final JsonNode value) {
        final Quantity quantity = quantity(where, where.substring(where.indexOf('.') + 1));
        switch (quantity) {
            case LOADS -> loads(where, value);
            case AVAILABLE_SECTIONS -> sections(where, value);
            case DROP_LIMIT -> limit(where, text(where, value));
            default -> {
                if (quantity.numeric()) {
                    figure(where, Ref.circuit(quantity), text(where, value));
                } else {
                    names.put(quantity, Names.of(quantity, where, text(where, value)));
                }
            }
        }
    }

    static Quantity quantity(final String where, final String id) {
        return Quantity.of(id)
                .orElseThrow(
                        () ->
                                new Unworkable(
                                        where,
                                        "no quantity is called \""
                                                + Names.shortened(id)
                                                + "\""
                                                + Names.nearest(id)));
    }

    static String text(final String where, final JsonNode value) {
        if (value.isString()) {
            return value.stringValue();
        }
        if (value.isNumber()) {
            return value.asString();
        }
        if (value.isBoolean()) {
            return value.booleanValue() ? "yes" : "no";
        }
        throw new Unworkable(where, "write a figure with its unit, or a name, in quotes");
    }

    private void limit(final String where, final String typed) {
        figure(where, Ref.circuit(limit(typed)), typed);
    }

    /** What a typed drop limit is: a share of the supply, or volts. */
    public static Quantity limit(final String typed) {
        final String plain = typed.toLowerCase(Locale.ROOT);
        final boolean share = plain.contains("%") || plain.contains("per");
        return share ? Quantity.DROP_LIMIT_SHARE : Quantity.DROP_LIMIT;
    }

    private void figure(final String where, final Ref ref, final String typed) {
        figures.put(ref, figure(where, ref.quantity(), typed));
    }

    /**
     * A given figure.
     *
     * @throws Unworkable where it can't be read or is no figure a circuit can have
     */
    public static Reading.Read figure(
            final String where, final Quantity quantity, final String typed) {
        final Reading reading = FIGURES.read(typed, quantity.dimension());
        if (reading instanceof Reading.Unclear unclear) {
            throw new Unworkable(where, unclear.question());
        }
        if (reading instanceof Reading.Unreadable unreadable) {
            throw new Unworkable(where, unreadable.message());
        }
        final Reading.Read read = (Reading.Read) reading;
        final Limits limits = Limits.of(quantity);
        if (!limits.holds(read.value())) {
            throw new Unworkable(where, limits.refusal(quantity, read.value()));
        }
        return read;
    }

    private void loads(final String where, final JsonNode list) {
        if (!list.isArray() || list.isEmpty() || list.size() > MOST_LOADS) {
            throw new Unworkable(where, "\"loads\" is a list of 1 to " + MOST_LOADS + " loads");
        }
        for (int i = 0; i < list.size(); i++) {
            load(where + "[" + i + "]", list.get(i), i + 1);
        }
    }

    private void load(final String where, final JsonNode load, final int number) {
        if (!load.isObject()) {
            throw new Unworkable(where, "a load is an object with a name and its power or current");
        }
        final Set<String> keys = new LinkedHashSet<>(LOAD_KEYS.keySet());
        keys.add("name");
        only(load, where, keys);
        loads.add(name(where, load, number));
        load.properties().stream()
                .filter(entry -> LOAD_KEYS.containsKey(entry.getKey()))
                .forEach(entry -> loadEntry(where, entry, number));
        drawsSomething(where, load);
    }

    private void loadEntry(
            final String where, final Map.Entry<String, JsonNode> entry, final int number) {
        final String path = where + "." + entry.getKey();
        final Quantity quantity = LOAD_KEYS.getOrDefault(entry.getKey(), Quantity.LOADS);
        figure(path, new Ref(quantity, number), text(path, entry.getValue()));
    }

    private static void drawsSomething(final String where, final JsonNode load) {
        if (!load.has("power") && !load.has("current") && !load.has("resistance")) {
            throw new Unworkable(where, "this load needs its power, current or resistance");
        }
    }

    private String name(final String where, final JsonNode load, final int number) {
        final String name =
                load.has("name") ? text(where + ".name", load.get("name")) : "load " + number;
        if (name.length() > LONGEST_NAME) {
            throw new Unworkable(where + ".name", "a name has at most 120 characters");
        }
        if (loads.contains(name)) {
            throw new Unworkable(where + ".name", "two loads are called \"" + name + "\"");
        }
        return name;
    }

    private void sections(final String where, final JsonNode list) {
        if (!list.isArray() || list.isEmpty() || list.size() > MOST_SECTIONS) {
            throw new Unworkable(where, "a list of 1 to 100 sections, such as [\"2.5 mm2\"]");
        }
        for (int i = 0; i < list.size(); i++) {
            final String path = where + "[" + i + "]";
            final Reading.Read read = figure(path, Quantity.SECTION, text(path, list.get(i)));
            available.add(read.value() / Dimension.AREA.scale());
        }
        available.sort(null);
    }

    static List<Quantity> find(final JsonNode find) {
        final List<Quantity> asked = new ArrayList<>();
        if (find.isArray()) {
            for (int i = 0; i < find.size(); i++) {
                asked.add(asked("find[" + i + "]", find.get(i)));
            }
        } else {
            asked.add(asked("find", find));
        }
        if (asked.isEmpty() || asked.size() > Quantity.values().length) {
            throw new Unworkable("find", "name at least one quantity to find");
        }
        return List.copyOf(new LinkedHashSet<>(asked));
    }

    private static Quantity asked(final String where, final JsonNode id) {
        if (!id.isString()) {
            throw new Unworkable(where, "name a quantity, such as \"load-current\"");
        }
        final Quantity quantity = quantity(where, id.stringValue());
        if (!quantity.numeric()) {
            throw new Unworkable(where, "\"" + quantity.id() + "\" is chosen, not worked out");
        }
        return quantity;
    }

    private static Map<Quantity, String> answers(final JsonNode json) {
        final Map<Quantity, String> answers = new LinkedHashMap<>();
        if (!json.has("answers")) {
            return answers;
        }
        if (!json.get("answers").isObject()) {
            throw new Unworkable("answers", "\"answers\" is an object of quantities");
        }
        json.get("answers")
                .properties()
                .forEach(
                        entry -> {
                            final String where = "answers." + entry.getKey();
                            answers.put(
                                    quantity(where, entry.getKey()), text(where, entry.getValue()));
                        });
        return answers;
    }
}
