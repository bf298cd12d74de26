package wireworthy.practice;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.MissingNode;
import tools.jackson.databind.node.ObjectNode;
import wireworthy.texts.Language;

/**
 * The texts of templates in the language in use, by bank and template: laid over the English ones,
 * so that numbers and what is right stand in one place only.
 */
final class SpokenTexts {
    private static final Set<String> TEXTS = Set.of("text", "ask", "why", "name");

    private final Map<String, JsonNode> byBank = new HashMap<>();

    /**
     * @param files each {@code {"bank": id, "templates": {id: texts}}}; one that is not is left out
     */
    SpokenTexts(final List<ContentFile> files) {
        for (final ContentFile file : files) {
            if (file instanceof ContentFile.Text text) {
                add(text);
            }
        }
    }

    private void add(final ContentFile.Text file) {
        try {
            final JsonNode root = Located.parse(file.text()).root().json();
            byBank.put(root.path("bank").asString(""), root.path("templates"));
        } catch (final JacksonException e) {
            // Its exercises are shown in English, which says so itself.
        }
    }

    /** Whether the texts of a template are missing in the language in use. */
    boolean lack(final String bank, final String template) {
        return !Language.inUse().ofSources() && !texts(bank, template).isObject();
    }

    /** The entry of a template with its texts in the language in use. */
    Entry over(final String bank, final Entry entry) {
        final JsonNode texts = texts(bank, entry.json().path("id").asString(""));
        return texts.isObject() ? new Entry(over(entry.json(), texts), entry.pointer()) : entry;
    }

    private JsonNode texts(final String bank, final String template) {
        final JsonNode templates = byBank.get(bank);
        return templates == null ? MissingNode.getInstance() : templates.path(template);
    }

    private static JsonNode over(final JsonNode below, final JsonNode texts) {
        final JsonNode laid = below.deepCopy();
        if (laid instanceof ObjectNode object && texts.isObject()) {
            texts.properties().forEach(each -> lay(object, each.getKey(), each.getValue()));
        } else if (laid instanceof ArrayNode list && texts.size() == list.size()) {
            for (int i = 0; i < list.size(); i++) {
                list.set(i, over(list.get(i), texts.get(i)));
            }
        }
        return laid;
    }

    private static void lay(final ObjectNode object, final String key, final JsonNode text) {
        final JsonNode below = object.path(key);
        if (text.isString() && below.isString() && TEXTS.contains(key)) {
            object.set(key, text);
        } else if (below.isContainer()) {
            object.set(key, over(below, text));
        }
    }
}
