package wireworthy.practice;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads the givens of a template. */
final class GivenReader {
    private static final int MOST_GIVENS = 40;
    private static final int MOST_LOADS = 20;
    private static final int MOST_CHOICES = 200;
    private static final int LONGEST = 120;
    private static final BigDecimal MOST_PLACES = BigDecimal.valueOf(1_000_000);

    private GivenReader() {}

    static Map<String, Given> all(final Entry entry) {
        final Map<String, Given> given = new LinkedHashMap<>();
        if (!entry.isObject() || entry.entries().isEmpty()) {
            throw entry.unfit("\"given\" is an object of quantities", "Write it in braces");
        }
        if (entry.entries().size() > MOST_GIVENS) {
            throw entry.unfit("more than " + MOST_GIVENS + " givens", "Take some out");
        }
        entry.entries().forEach(each -> given.put(each.getKey(), given(each.getValue())));
        return given;
    }

    private static Given given(final Entry entry) {
        if (!entry.isArray()) {
            return single(entry);
        }
        return entry.list(MOST_CHOICES).get(0).isObject()
                ? loads(entry.list(MOST_LOADS))
                : new Given.Sections(texts(entry));
    }

    private static List<String> texts(final Entry entry) {
        return entry.list(MOST_CHOICES).stream().map(each -> each.text(LONGEST)).toList();
    }

    private static Given.Loads loads(final List<Entry> list) {
        return new Given.Loads(list.stream().map(GivenReader::load).toList());
    }

    private static Map<String, Given.Single> load(final Entry entry) {
        if (!entry.isObject()) {
            throw entry.unfit("a load is an object", "Write its name and power in braces");
        }
        final Map<String, Given.Single> load = new LinkedHashMap<>();
        entry.entries().forEach(each -> load.put(each.getKey(), single(each.getValue())));
        return load;
    }

    private static Given.Single single(final Entry entry) {
        if (entry.isText()) {
            return new Given.Fixed(entry.text(LONGEST));
        }
        if (entry.isObject() && entry.has("of")) {
            return new Given.Choice(texts(entry.only(Set.of("of")).at("of")));
        }
        if (entry.isObject() && entry.has("from")) {
            return range(entry.only(Set.of("from", "to", "step", "unit")));
        }
        throw entry.unfit(
                "this given is neither a text nor a range nor a choice",
                "Write \"12 V\", {\"from\": 2, \"to\": 9, \"step\": 0.1, \"unit\": \"A\"} or"
                        + " {\"of\": [\"1.5 mm2\", \"2.5 mm2\"]}");
    }

    private static Given.Range range(final Entry entry) {
        final BigDecimal from = entry.at("from").number();
        final BigDecimal to = entry.at("to").number();
        final BigDecimal step = entry.at("step").number();
        if (step.signum() <= 0 || to.compareTo(from) < 0) {
            throw entry.unfit(
                    "the range leads nowhere", "\"step\" is above 0 and \"to\" not below \"from\"");
        }
        final BigDecimal places = to.subtract(from).divide(step, 0, RoundingMode.FLOOR);
        if (places.compareTo(MOST_PLACES) > 0) {
            throw entry.unfit("the range has more than a million figures", "Make the step larger");
        }
        final String unit = entry.has("unit") ? entry.at("unit").text(LONGEST) : "";
        return new Given.Range(from, step, places.intValueExact() + 1, unit);
    }
}
