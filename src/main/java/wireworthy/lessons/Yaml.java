package wireworthy.lessons;

import java.util.Collection;
import java.util.List;
import java.util.Map;

/** A piece of YAML with the line it begins on; scalars stay as they were typed. */
sealed interface Yaml {
    int line();

    record Text(int line, String text) implements Yaml {}

    record Items(int line, List<Yaml> items) implements Yaml {}

    record Keys(int line, Map<String, Yaml> entries) implements Yaml {
        Keys only(final Collection<String> known) {
            entries.forEach(
                    (key, value) -> {
                        if (!known.contains(key)) {
                            throw new Refused(
                                    value.line(),
                                    "\"" + Excerpt.of(key) + "\" is not known here",
                                    "Here belong " + String.join(", ", known) + ".");
                        }
                    });
            return this;
        }

        boolean has(final String key) {
            return entries.containsKey(key);
        }

        Yaml at(final String key) {
            final Yaml value = entries.get(key);
            if (value == null) {
                throw new Refused(
                        line, "\"" + key + "\" is missing", "Add a line \"" + key + ": ...\".");
            }
            return value;
        }

        String text(final String key) {
            return Yaml.text(key, at(key));
        }

        List<String> texts(final String key) {
            return Yaml.items(key, at(key)).stream().map(item -> Yaml.text(key, item)).toList();
        }
    }

    static String text(final String key, final Yaml value) {
        if (value instanceof Text text && !text.text().isBlank()) {
            return text.text().strip();
        }
        throw new Refused(
                value.line(), "\"" + key + "\" is one value", "Write \"" + key + ": value\".");
    }

    static List<Yaml> items(final String key, final Yaml value) {
        if (value instanceof Items list) {
            return list.items();
        }
        throw new Refused(
                value.line(), "\"" + key + "\" is a list", "Write \"" + key + ": [one, two]\".");
    }

    static Keys keys(final String key, final Yaml value) {
        if (value instanceof Keys keys) {
            return keys;
        }
        throw new Refused(
                value.line(),
                "\"" + key + "\" has entries of its own",
                "Write \"" + key + ": {name: value}\".");
    }
}
