package wireworthy.lessons;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.dataformat.yaml.YAMLFactory;
import tools.jackson.dataformat.yaml.YAMLParser;

/**
 * Reads a block of YAML: keys once each, no anchors, few levels. The stream parser is used bare
 * because binding to objects would cost the first lesson some tenths of a second.
 */
final class YamlReader {
    private static final YAMLFactory YAML = new YAMLFactory();
    private static final int DEEPEST = 5;

    private final YAMLParser parser;
    private final int linesBefore;

    private YamlReader(final YAMLParser parser, final int linesBefore) {
        this.parser = parser;
        this.linesBefore = linesBefore;
    }

    /**
     * Reads the keys of a block.
     *
     * @param linesBefore how many lines of the file stand before the block
     * @throws Refused naming the line
     */
    static Yaml.Keys read(final String block, final int linesBefore) {
        try (YAMLParser parser = opened(block)) {
            return new YamlReader(parser, linesBefore).block();
        } catch (final JacksonException e) {
            throw new Refused(
                    Excerpt.line(block, linesBefore, e),
                    "This is not YAML: " + Excerpt.of(e.getOriginalMessage()),
                    "Write lines such as \"name: value\"; put a value with a colon in quotes.");
        }
    }

    private static YAMLParser opened(final String block) {
        return (YAMLParser) YAML.createParser(ObjectReadContext.empty(), block);
    }

    private Yaml.Keys block() {
        if (parser.nextToken() != JsonToken.START_OBJECT) {
            throw refused("There are no keys here", "Write lines such as \"name: value\".");
        }
        final Yaml.Keys keys = keys(1);
        if (parser.nextToken() != null) {
            throw refused("Something follows the block", "Keep one set of keys in it.");
        }
        return keys;
    }

    private int line() {
        return linesBefore + Math.max(1, parser.currentTokenLocation().getLineNr());
    }

    private Refused refused(final String message, final String remedy) {
        return new Refused(line(), message, remedy);
    }

    private Yaml value(final int depth) {
        if (depth > DEEPEST) {
            throw refused("This is nested too deeply", "Use at most five levels.");
        }
        if (parser.isCurrentAlias() || parser.getObjectId() != null) {
            throw refused("Anchors and references are not read here", "Write the value out.");
        }
        return switch (parser.currentToken()) {
            case START_OBJECT -> keys(depth);
            case START_ARRAY -> items(depth);
            case VALUE_NULL -> new Yaml.Text(line(), "");
            default -> new Yaml.Text(line(), parser.getString());
        };
    }

    private Yaml.Keys keys(final int depth) {
        final int line = line();
        final Map<String, Yaml> entries = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            final String key = parser.currentName();
            if (entries.containsKey(key)) {
                throw refused("\"" + Excerpt.of(key) + "\" stands here twice", "Keep one.");
            }
            parser.nextToken();
            entries.put(key, value(depth + 1));
        }
        return new Yaml.Keys(line, Collections.unmodifiableMap(entries));
    }

    private Yaml.Items items(final int depth) {
        final int line = line();
        final List<Yaml> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            items.add(value(depth + 1));
        }
        return new Yaml.Items(line, List.copyOf(items));
    }
}
