package wireworthy.lessons;

import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Reads the JSON of a block. A mapper would do it, but costs the first lesson 0.2 s. */
final class JsonReader {
    private static final JsonFactory JSON =
            JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final int DEEPEST = 6;

    private final JsonParser parser;

    private JsonReader(final JsonParser parser) {
        this.parser = parser;
    }

    /**
     * Reads one value.
     *
     * @param linesBefore how many lines of the file stand before the block
     * @throws Refused naming the line
     */
    static JsonNode read(final String block, final int linesBefore) {
        try (JsonParser parser = JSON.createParser(ObjectReadContext.empty(), block)) {
            parser.nextToken();
            final JsonNode node = new JsonReader(parser).value(1);
            if (parser.nextToken() != null) {
                throw refused(linesBefore + 1, "more than one object stands here");
            }
            return node;
        } catch (final JacksonException e) {
            throw refused(Excerpt.line(block, linesBefore, e), Excerpt.of(e.getOriginalMessage()));
        } catch (final TooDeep e) {
            throw refused(linesBefore + 1, "it is nested too deeply");
        }
    }

    private static Refused refused(final int line, final String why) {
        return new Refused(
                line,
                "The question can't be read: " + why,
                "Write {\"given\": {...}, \"find\": \"...\"}.");
    }

    private static final class TooDeep extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    private JsonNode value(final int depth) {
        if (depth > DEEPEST) {
            throw new TooDeep();
        }
        final JsonToken token = parser.currentToken();
        if (token == null) {
            return NODES.missingNode();
        }
        return switch (token) {
            case START_OBJECT -> object(depth);
            case START_ARRAY -> array(depth);
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> NODES.numberNode(parser.getDecimalValue());
            case VALUE_TRUE, VALUE_FALSE -> NODES.booleanNode(token == JsonToken.VALUE_TRUE);
            case VALUE_NULL -> NODES.nullNode();
            default -> NODES.stringNode(parser.getString());
        };
    }

    private ObjectNode object(final int depth) {
        final ObjectNode object = NODES.objectNode();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            final String key = parser.currentName();
            parser.nextToken();
            object.set(key, value(depth + 1));
        }
        return object;
    }

    private ArrayNode array(final int depth) {
        final ArrayNode array = NODES.arrayNode();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            array.add(value(depth + 1));
        }
        return array;
    }
}
