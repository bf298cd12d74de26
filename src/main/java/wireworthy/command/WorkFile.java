package wireworthy.command;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import wireworthy.working.Question;
import wireworthy.working.QuestionReader;
import wireworthy.working.Solver;
import wireworthy.working.Unworkable;

/** Works a file of questions, one a line, and writes a reply a line. */
public final class WorkFile {
    private static final int LONGEST_LINE = 1_000_000;
    private static final int DEEPEST = 20;

    private static final int USUAL_REPLY = 4096;

    private final Solver solver = new Solver();
    private final JsonMapper mapper =
            JsonMapper.builder(
                            JsonFactory.builder()
                                    .streamReadConstraints(
                                            StreamReadConstraints.builder()
                                                    .maxNestingDepth(DEEPEST)
                                                    .build())
                                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                                    .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
                                    .build())
                    .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                    .build();

    /**
     * Works every line; blank lines are passed over.
     *
     * @return whether every question was worked whole
     */
    public boolean work(final BufferedReader questions, final PrintWriter replies)
            throws IOException {
        boolean all = true;
        int number = 0;
        for (String line = questions.readLine(); line != null; line = questions.readLine()) {
            number++;
            final String question = number == 1 ? withoutMark(line) : line;
            if (!question.isBlank()) {
                all &= reply(question, number, replies);
            }
        }
        replies.flush();
        return all;
    }

    /** Some editors put a byte order mark before the first line. */
    private static String withoutMark(final String line) {
        return line.startsWith("\uFEFF") ? line.substring(1) : line;
    }

    /** A reply is put together whole before any of it is written. */
    private boolean reply(final String line, final int number, final PrintWriter replies) {
        try {
            final JsonNode question = parsed(line, number);
            final StringWriter reply = new StringWriter(USUAL_REPLY);
            final boolean whole = written(QuestionReader.read(question), reply);
            replies.println(reply.getBuffer());
            return whole;
        } catch (final Unworkable why) {
            final StringWriter reply = new StringWriter();
            try (JsonGenerator json = mapper.createGenerator(reply)) {
                Reply.error(why, json);
            }
            replies.println(reply.getBuffer());
            return false;
        }
    }

    private boolean written(final Question question, final StringWriter reply) {
        try (JsonGenerator json = mapper.createGenerator(reply)) {
            return Reply.write(question, solver, json);
        }
    }

    private JsonNode parsed(final String line, final int number) {
        if (line.length() > LONGEST_LINE) {
            throw new Unworkable("line " + number, "a question has at most 1,000,000 characters");
        }
        try {
            return mapper.readTree(line);
        } catch (final JacksonException e) {
            throw new Unworkable(
                    "line " + number + column(e),
                    "this is not one JSON object: " + e.getOriginalMessage());
        }
    }

    /** Where a limit is passed rather than a sign misplaced, the parser names no place. */
    private static String column(final JacksonException e) {
        return Optional.ofNullable(e.getLocation())
                .map(place -> ", column " + place.getColumnNr())
                .orElse("");
    }
}
