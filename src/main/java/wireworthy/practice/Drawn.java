package wireworthy.practice;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import wireworthy.rules.Dimension;
import wireworthy.rules.Figures;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.working.QuestionReader;
import wireworthy.working.Telling;
import wireworthy.working.Worked;

/** The figures drawn for a template, as typed, by the names of their placeholders. */
final class Drawn {
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{([a-z0-9.-]+)}");
    private static final Pattern WORKED = Pattern.compile("\\{=([a-z0-9-]+)}");
    private static final JsonMapper JSON = JsonMapper.shared();

    private final Template template;
    private final Map<String, String> typed = new TreeMap<>();

    Drawn(final Template template, final SplitMix random) {
        this.template = template;
        template.mentionable()
                .forEach(given -> typed.put(given.getKey(), drawn(given.getValue(), random)));
    }

    private static String drawn(final Given.Single given, final SplitMix random) {
        if (given instanceof Given.Range range) {
            return range.at(random.below(range.count()));
        }
        return given instanceof Given.Choice choice
                ? choice.of().get(random.below(choice.of().size()))
                : ((Given.Fixed) given).text();
    }

    /** The question in the question format. */
    ObjectNode question() {
        final ObjectNode question = JSON.createObjectNode();
        final ObjectNode given = question.putObject("given");
        template.given().forEach((id, value) -> put(given, id, value));
        final ArrayNode find = question.putArray("find");
        template.finds().forEach(quantity -> find.add(quantity.id()));
        return question;
    }

    /** The names of the givens that a text speaks of. */
    static Set<String> given(final String text) {
        return names(PLACEHOLDER, text);
    }

    /** The quantities of the circuit that a text speaks of as {@code {=drop}}. */
    static Set<Quantity> worked(final String text) {
        return workedNames(text).stream()
                .flatMap(name -> Quantity.of(name).stream())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** The ids of them, whether there is such a quantity or not. */
    static Set<String> workedNames(final String text) {
        return names(WORKED, text);
    }

    private static Set<String> names(final Pattern pattern, final String text) {
        return pattern.matcher(text)
                .results()
                .map(place -> place.group(1))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** A text with its placeholders filled, those of worked values too. */
    String filled(final String text, final Worked worked) {
        return WORKED.matcher(filled(text))
                .replaceAll(place -> Matcher.quoteReplacement(shown(place.group(1), worked)));
    }

    private static String shown(final String id, final Worked worked) {
        final Quantity quantity = Quantity.of(id).orElseThrow();
        return Telling.result(quantity, worked.value(quantity).orElse(Double.NaN));
    }

    private void put(final ObjectNode given, final String id, final Given value) {
        if (value instanceof Given.Sections sections) {
            final ArrayNode list = given.putArray(id);
            sections.texts().forEach(list::add);
        } else if (value instanceof Given.Loads loads) {
            putLoads(given.putArray(id), loads.loads());
        } else {
            given.put(id, typed(id));
        }
    }

    private void putLoads(final ArrayNode list, final List<Map<String, Given.Single>> loads) {
        for (int i = 0; i < loads.size(); i++) {
            final ObjectNode load = list.addObject();
            for (final String key : loads.get(i).keySet()) {
                load.put(key, typed((i + 1) + "." + key));
            }
        }
    }

    private String typed(final String placeholder) {
        return typed.getOrDefault(placeholder, "");
    }

    /** A text with its placeholders filled. */
    String filled(final String text) {
        final Matcher matcher = PLACEHOLDER.matcher(text);
        return matcher.replaceAll(place -> Matcher.quoteReplacement(shown(place.group(1))));
    }

    /** A figure as people are shown it: "1.5 mm²" for "1.5 mm2", never turned into other units. */
    private String shown(final String placeholder) {
        final String text = typed(placeholder);
        final Dimension dimension = dimension(placeholder);
        if (dimension == Dimension.NAME
                || !(Figures.read(text, dimension, false) instanceof Reading.Read read)) {
            return text;
        }
        return read.inItsOwnUnit();
    }

    private static Dimension dimension(final String placeholder) {
        return ref(placeholder).map(ref -> ref.quantity().dimension()).orElse(Dimension.NAME);
    }

    /** The givens whose figures are drawn from a range. */
    Set<Ref> varied() {
        return template.mentionable()
                .filter(given -> given.getValue() instanceof Given.Range)
                .flatMap(given -> ref(given.getKey()).stream())
                .collect(Collectors.toSet());
    }

    /** What a placeholder stands for; empty for the name of a load. */
    private static Optional<Ref> ref(final String placeholder) {
        final int dot = placeholder.indexOf('.');
        if (dot < 0) {
            return Quantity.of(placeholder).map(Ref::circuit);
        }
        final int load = Integer.parseInt(placeholder.substring(0, dot));
        return Optional.ofNullable(QuestionReader.LOAD_KEYS.get(placeholder.substring(dot + 1)))
                .map(quantity -> new Ref(quantity, load));
    }
}
