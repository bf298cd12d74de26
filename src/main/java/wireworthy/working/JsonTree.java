package wireworthy.working;

import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Reads a JSON value as a tree. A mapper would do it, but takes longer to set up than hundreds of
 * questions take to work.
 */
public final class JsonTree {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final JsonParser parser;

    private JsonTree(final JsonParser parser) {
        this.parser = parser;
    }

    /**
     * Reads the next value; the parser sets the limits and refuses what is not JSON.
     *
     * @return a missing node where nothing follows
     */
    public static JsonNode next(final JsonParser parser) {
        parser.nextToken();
        return new JsonTree(parser).value();
    }

    private JsonNode value() {
        final JsonToken token = parser.currentToken();
        if (token == null) {
            return NODES.missingNode();
        }
        return switch (token) {
            case START_OBJECT -> object();
            case START_ARRAY -> array();
            case VALUE_NUMBER_INT -> NODES.numberNode(parser.getBigIntegerValue());
            case VALUE_NUMBER_FLOAT -> NODES.numberNode(parser.getDoubleValue());
            case VALUE_TRUE, VALUE_FALSE -> NODES.booleanNode(token == JsonToken.VALUE_TRUE);
            case VALUE_NULL -> NODES.nullNode();
            default -> NODES.stringNode(parser.getString());
        };
    }

    private ObjectNode object() {
        final ObjectNode object = NODES.objectNode();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            final String key = parser.currentName();
            parser.nextToken();
            object.set(key, value());
        }
        return object;
    }

    private ArrayNode array() {
        final ArrayNode array = NODES.arrayNode();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            array.add(value());
        }
        return array;
    }
}
