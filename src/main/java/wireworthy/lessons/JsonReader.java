package wireworthy.lessons;

import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.JsonNode;
import wireworthy.working.JsonTree;

/** Reads the JSON of a block. */
final class JsonReader {
    private static final int DEEPEST = 6;
    private static final JsonFactory JSON =
            JsonFactory.builder()
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .streamReadConstraints(
                            StreamReadConstraints.builder().maxNestingDepth(DEEPEST).build())
                    .build();

    private JsonReader() {}

    /**
     * Reads one value.
     *
     * @param linesBefore how many lines of the file stand before the block
     * @throws Refused naming the line
     */
    static JsonNode read(final String block, final int linesBefore) {
        try (JsonParser parser = JSON.createParser(ObjectReadContext.empty(), block)) {
            final JsonNode node = JsonTree.next(parser);
            if (parser.nextToken() != null) {
                throw refused(linesBefore + 1, "more than one object stands here");
            }
            return node;
        } catch (final StreamConstraintsException e) {
            throw refused(
                    linesBefore + 1, "it is nested too deeply, or something in it is too long");
        } catch (final JacksonException e) {
            throw refused(Excerpt.line(block, linesBefore, e), Excerpt.of(e.getOriginalMessage()));
        }
    }

    private static Refused refused(final int line, final String why) {
        return new Refused(
                line,
                "The question can't be read: " + why,
                "Write {\"given\": {...}, \"find\": \"...\"}.");
    }
}
