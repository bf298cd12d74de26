package wireworthy.command;

import java.io.BufferedReader;
import java.io.CharArrayWriter;
import java.io.IOException;
import java.io.PrintWriter;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.JsonNode;
import wireworthy.working.JsonTree;
import wireworthy.working.NetworkReader;
import wireworthy.working.Question;
import wireworthy.working.QuestionReader;
import wireworthy.working.Solver;
import wireworthy.working.Unworkable;

/** Works a file of questions, one a line, and writes a reply a line. */
public final class WorkFile {
    private static final int LONGEST_LINE = 1_000_000;
    private static final int DEEPEST = 20;

    private final Solver solver = new Solver();
    private final CharArrayWriter reply = new CharArrayWriter(4096);
    private final JsonFactory factory =
            JsonFactory.builder()
                    .streamReadConstraints(
                            StreamReadConstraints.builder().maxNestingDepth(DEEPEST).build())
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
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
    private boolean reply(final String line, final int number, final PrintWriter replies)
            throws IOException {
        try {
            final JsonNode asked = parsed(line, number);
            if (NetworkReader.asks(asked)) {
                return written(replies, json -> NetworkReply.write(asked, solver, json));
            }
            final Question question = QuestionReader.read(asked);
            return written(replies, json -> Reply.write(question, solver, json));
        } catch (final Unworkable why) {
            return written(replies, json -> Reply.error(why, json));
        }
    }

    private boolean written(final PrintWriter replies, final Predicate<JsonGenerator> writing)
            throws IOException {
        reply.reset();
        final boolean whole;
        try (JsonGenerator json = factory.createGenerator(ObjectWriteContext.empty(), reply)) {
            whole = writing.test(json);
        }
        reply.writeTo(replies);
        replies.println();
        return whole;
    }

    private JsonNode parsed(final String line, final int number) {
        if (line.length() > LONGEST_LINE) {
            throw new Unworkable("line " + number, "a question has at most 1,000,000 characters");
        }
        try (JsonParser parser = factory.createParser(ObjectReadContext.empty(), line)) {
            final JsonNode question = JsonTree.next(parser);
            if (parser.nextToken() != null) {
                throw noObject(number, parser.currentTokenLocation(), "more follows after its end");
            }
            return question;
        } catch (final JacksonException e) {
            throw noObject(number, e.getLocation(), e.getOriginalMessage());
        }
    }

    /** Where a limit is passed rather than a sign misplaced, the parser names no place. */
    private static Unworkable noObject(
            final int number, final @Nullable TokenStreamLocation place, final String why) {
        final String column = place == null ? "" : ", column " + place.getColumnNr();
        return new Unworkable(
                "line " + number + column, "this is not one JSON object: " + withoutPlace(why));
    }

    /** The place is said already, and better than the parser can. */
    private static String withoutPlace(final String why) {
        final int place = why.indexOf(" (start marker at");
        return place < 0 ? why : why.substring(0, place);
    }
}
