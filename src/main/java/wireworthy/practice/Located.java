package wireworthy.practice;

import java.util.HashMap;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A JSON text as a tree that remembers on which line each entry stands. */
public final class Located {
    private static final JsonMapper JSON =
            JsonMapper.builder(
                            JsonFactory.builder()
                                    .streamReadConstraints(
                                            StreamReadConstraints.builder()
                                                    .maxNestingDepth(12)
                                                    .maxNumberLength(24)
                                                    .maxStringLength(8000)
                                                    .build())
                                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                                    .enable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
                                    .build())
                    .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
                    .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                    .build();

    private final JsonNode root;
    private final Map<String, Integer> lines = new HashMap<>();

    private Located(final JsonNode root) {
        this.root = root;
    }

    /**
     * Reads a text.
     *
     * @throws tools.jackson.core.JacksonException where it is not JSON or too deeply nested
     */
    public static Located parse(final String text) {
        final Located located = new Located(JSON.readTree(text));
        try (JsonParser parser = JSON.createParser(text)) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                located.lines.putIfAbsent(
                        parser.streamReadContext().pathAsPointer().toString(),
                        parser.currentTokenLocation().getLineNr());
            }
        }
        return located;
    }

    public Entry root() {
        return new Entry(root, "");
    }

    /** The line where a text stops being JSON; 0 where that is not known. */
    public static int lineOf(final JacksonException problem) {
        final TokenStreamLocation location = problem.getLocation();
        return location == null ? 0 : Math.max(0, location.getLineNr());
    }

    /** The line of an entry, or of the nearest one around it. */
    public int line(final String pointer) {
        final int end = pointer.lastIndexOf('/');
        final Integer line = lines.get(pointer);
        if (line != null) {
            return line;
        }
        return end < 0 ? 1 : line(pointer.substring(0, end));
    }
}
