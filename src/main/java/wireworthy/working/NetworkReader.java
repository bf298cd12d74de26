package wireworthy.working;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;

/** Reads a question about a network of cables; each thing wrong is named with its path. */
public final class NetworkReader {
    private static final String GIVEN = "given";
    private static final String NETWORK = "network";
    private static final String WHERE = "given.network";
    private static final String STRETCHES = "stretches";
    private static final String LOADS = "loads";
    private static final int MOST = 200;
    private static final int LONGEST_NAME = 120;
    private static final Set<String> BESIDE =
            new LinkedHashSet<>(
                    List.of(
                            NETWORK,
                            "supply-voltage",
                            "internal-resistance",
                            "resistivity",
                            "conductor-temperature",
                            "conductor-metal",
                            "resistance-per-length",
                            "drop-limit"));
    private static final Map<String, Quantity> DRAWS =
            Map.of(
                    "power", Quantity.LOAD_POWER,
                    "resistance", Quantity.RESISTANCE,
                    "current", Quantity.LOAD_CURRENT);

    private final JsonNode network;
    private final Worked beside;
    private final List<CableNetwork.Stretch> stretches = new ArrayList<>();
    private final List<NetworkLoad> loads = new ArrayList<>();

    private NetworkReader(final JsonNode network, final Worked beside) {
        this.network = network;
        this.beside = beside;
    }

    /** Whether a question is one about a network. */
    public static boolean asks(final JsonNode question) {
        return question.path(GIVEN).has(NETWORK);
    }

    /**
     * What is asked.
     *
     * @throws Unworkable where it is no quantity
     */
    public static List<Quantity> find(final JsonNode question) {
        return QuestionReader.find(QuestionReader.required(question, "find"));
    }

    /**
     * What is given beside the network, worked as far as it goes: supply, resistivity, drop limit.
     *
     * @throws Unworkable naming the path of what can't be read
     */
    public static Worked beside(final JsonNode question, final Solver solver) {
        QuestionReader.only(question, "", Set.of(GIVEN, "find"));
        QuestionReader.only(question.get(GIVEN), GIVEN, BESIDE);
        final ObjectNode rest = JsonNodeFactory.instance.objectNode();
        final ObjectNode given = rest.putObject(GIVEN);
        question.get(GIVEN).properties().stream()
                .filter(entry -> !entry.getKey().equals(NETWORK))
                .forEach(entry -> given.set(entry.getKey(), entry.getValue()));
        rest.putArray("find").add("resistivity").add("drop-limit").add("internal-resistance");
        return solver.work(QuestionReader.read(rest));
    }

    /**
     * The network of a question.
     *
     * @param beside what is given beside it
     * @throws Unworkable naming the path of what can't be read
     */
    public static CableNetwork read(final JsonNode question, final Worked beside) {
        final NetworkReader reader = new NetworkReader(question.get(GIVEN).get(NETWORK), beside);
        final double supply =
                beside.value(Quantity.SUPPLY_VOLTAGE)
                        .orElseThrow(
                                () ->
                                        new Unworkable(
                                                "given.supply-voltage",
                                                "the voltage of the source is missing"));
        QuestionReader.only(reader.network, WHERE, Set.of(STRETCHES, LOADS));
        reader.each(STRETCHES, reader::stretch);
        reader.each(LOADS, reader::load);
        reader.connected();
        return new CableNetwork(
                supply,
                beside.value(Quantity.INTERNAL_RESISTANCE).orElse(0),
                reader.stretches,
                reader.loads);
    }

    private interface Item {
        void read(String where, JsonNode item);
    }

    private void each(final String key, final Item item) {
        final JsonNode list = network.path(key);
        if (!list.isArray() || list.isEmpty() || list.size() > MOST) {
            throw new Unworkable(
                    WHERE + "." + key, "\"" + key + "\" is a list of 1 to " + MOST + " entries");
        }
        for (int i = 0; i < list.size(); i++) {
            if (!list.get(i).isObject()) {
                throw new Unworkable(WHERE + "." + key + "[" + i + "]", "an object in braces");
            }
            item.read(WHERE + "." + key + "[" + i + "]", list.get(i));
        }
    }

    private void stretch(final String where, final JsonNode stretch) {
        QuestionReader.only(
                stretch,
                where,
                Set.of(
                        "from",
                        "to",
                        "one-way-length",
                        "section",
                        "gauge",
                        "resistance-per-length",
                        "loop-resistance"));
        final String from = name(where, stretch, "from");
        final String to = name(where, stretch, "to");
        if (from.equals(to)) {
            throw new Unworkable(where, "this stretch leads from " + from + " to itself");
        }
        stretches.add(resistance(where, stretch, from, to));
    }

    private CableNetwork.Stretch resistance(
            final String where, final JsonNode stretch, final String from, final String to) {
        final OptionalDouble section = section(where, stretch);
        final double m2 = section.orElse(Double.NaN);
        if (stretch.has("loop-resistance")) {
            final double ohms = figure(where, stretch, "loop-resistance", Quantity.LOOP_RESISTANCE);
            return new CableNetwork.Stretch(from, to, ohms, m2, shown(ohms, Dimension.RESISTANCE));
        }
        final double length = figure(where, stretch, "one-way-length", Quantity.ONE_WAY_LENGTH);
        final OptionalDouble perLength = perLength(where, stretch);
        if (perLength.isPresent()) {
            final double r = perLength.getAsDouble();
            final String sum = "2 × %s × %s".formatted(perMetre(r), metres(length));
            return new CableNetwork.Stretch(from, to, 2 * r * length, m2, sum);
        }
        if (section.isEmpty()) {
            throw new Unworkable(
                    where + ".section", "give this stretch its section, such as \"2.5 mm2\"");
        }
        final double rho = beside.value(Quantity.RESISTIVITY).orElse(Double.NaN);
        final String sum =
                "2 × %s × %s ÷ %s"
                        .formatted(
                                FigureText.number(rho, Dimension.RESISTIVITY, 4),
                                FigureText.number(length, Dimension.LENGTH, 4),
                                FigureText.number(m2, Dimension.AREA, 4));
        return new CableNetwork.Stretch(from, to, 2 * rho * length / m2, m2, sum);
    }

    private static String metres(final double length) {
        return FigureText.of(length, Dimension.LENGTH, 4);
    }

    private static String perMetre(final double r) {
        return FigureText.of(r, Quantity.RESISTANCE_PER_LENGTH.dimension(), 4);
    }

    private static String shown(final double value, final Dimension dimension) {
        return FigureText.of(value, dimension, 4);
    }

    private OptionalDouble section(final String where, final JsonNode stretch) {
        if (stretch.has("section")) {
            return OptionalDouble.of(figure(where, stretch, "section", Quantity.SECTION));
        }
        return stretch.has("gauge")
                ? OptionalDouble.of(figure(where, stretch, "gauge", Quantity.SECTION))
                : OptionalDouble.empty();
    }

    private OptionalDouble perLength(final String where, final JsonNode stretch) {
        if (stretch.has("resistance-per-length")) {
            return OptionalDouble.of(
                    figure(
                            where,
                            stretch,
                            "resistance-per-length",
                            Quantity.RESISTANCE_PER_LENGTH));
        }
        return stretch.has("section") || stretch.has("gauge")
                ? OptionalDouble.empty()
                : beside.typed(Ref.circuit(Quantity.RESISTANCE_PER_LENGTH)).stream()
                        .mapToDouble(Reading.Read::value)
                        .findFirst();
    }

    private static double figure(
            final String where, final JsonNode item, final String key, final Quantity quantity) {
        final String path = where + "." + key;
        if (!item.has(key)) {
            throw new Unworkable(path, "\"" + key + "\" is missing");
        }
        return QuestionReader.figure(path, quantity, QuestionReader.text(path, item.get(key)))
                .value();
    }

    private static String name(final String where, final JsonNode item, final String key) {
        final String path = where + "." + key;
        if (!item.has(key)) {
            throw new Unworkable(path, "\"" + key + "\" is missing: the name of a place");
        }
        final String name = QuestionReader.text(path, item.get(key)).strip();
        if (name.isEmpty() || name.length() > LONGEST_NAME) {
            throw new Unworkable(path, "a name has 1 to " + LONGEST_NAME + " characters");
        }
        return name;
    }

    private void load(final String where, final JsonNode load) {
        QuestionReader.only(load, where, Set.of("name", "at", "power", "resistance", "current"));
        final String at = name(where, load, "at");
        final String name =
                load.has("name") ? name(where, load, "name") : "load " + (loads.size() + 1);
        if (loads.stream().anyMatch(other -> other.name().equals(name))) {
            throw new Unworkable(where + ".name", "two loads are called \"" + name + "\"");
        }
        final List<String> drawn =
                load.propertyNames().stream().filter(DRAWS::containsKey).toList();
        if (drawn.size() != 1) {
            throw new Unworkable(
                    where, "give this load one of its power, its resistance or its current");
        }
        final String key = drawn.get(0);
        final double value = figure(where, load, key, DRAWS.getOrDefault(key, Quantity.LOAD_POWER));
        loads.add(
                switch (key) {
                    case "power" -> new NetworkLoad.Watts(name, at, value);
                    case "resistance" -> new NetworkLoad.Ohms(name, at, value);
                    default -> new NetworkLoad.Amps(name, at, value);
                });
    }

    /** Every place has a way to the source, and every load a place. */
    private void connected() {
        final Set<String> reached = new HashSet<>(Set.of(CableNetwork.SOURCE));
        boolean more = true;
        while (more) {
            more = false;
            for (final CableNetwork.Stretch stretch : stretches) {
                if (reached.contains(stretch.from()) || reached.contains(stretch.to())) {
                    more |= reached.addAll(List.of(stretch.from(), stretch.to()));
                }
            }
        }
        for (int i = 0; i < stretches.size(); i++) {
            if (!reached.contains(stretches.get(i).from())) {
                throw new Unworkable(
                        WHERE + ".stretches[" + i + "]",
                        "no way leads from \"source\" to "
                                + stretches.get(i).from()
                                + "; one stretch has to begin at \"source\"");
            }
        }
        for (int i = 0; i < loads.size(); i++) {
            if (!reached.contains(loads.get(i).at())) {
                throw new Unworkable(
                        WHERE + ".loads[" + i + "].at",
                        "no stretch leads to \"" + Names.shortened(loads.get(i).at()) + "\"");
            }
        }
    }
}
