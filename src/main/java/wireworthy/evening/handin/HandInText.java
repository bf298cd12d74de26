package wireworthy.evening.handin;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import wireworthy.evening.EveningProblem;
import wireworthy.evening.Pick;
import wireworthy.evening.SheetPlan;
import wireworthy.practice.Entry;
import wireworthy.practice.Located;

/**
 * A hand-in as JSON. Its checksum shows that a file was cut off or edited by accident; it is no
 * lock, as whoever edits a file on purpose can work out another.
 */
final class HandInText {
    private static final String KIND = "wireworthy";
    private static final String HAND_IN = "hand-in";
    private static final int VERSION = 1;
    private static final int MOST_ANSWERS = 20;
    private static final int LONGEST_NAME = 40;
    private static final Set<String> KEYS =
            Set.of(KIND, "version", "mark", "learner", "name", "begun", "replies", "checksum");
    private static final Set<String> REPLY = Set.of("problem", "typed", "help", "at");

    private HandInText() {}

    /** The same hand-in always gives the same text. */
    static String of(final HandIn handIn) {
        final ObjectNode json = json(handIn);
        json.put("checksum", checksum(handIn));
        return JsonMapper.shared().writeValueAsString(json) + "\n";
    }

    private static ObjectNode json(final HandIn handIn) {
        final ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put(KIND, HAND_IN).put("version", VERSION).put("mark", handIn.mark());
        json.put("learner", handIn.learner()).put("name", handIn.name());
        json.put("begun", handIn.begun().toString());
        final ArrayNode replies = json.putArray("replies");
        for (final Reply reply : handIn.replies()) {
            final ObjectNode each = replies.addObject().put("problem", reply.problem());
            final ArrayNode typed = each.putArray("typed");
            reply.typed().forEach(typed::add);
            each.put("help", reply.wantsHelp()).put("at", reply.at().toString());
        }
        return json;
    }

    private static String checksum(final HandIn handIn) {
        final byte[] text =
                JsonMapper.shared()
                        .writeValueAsString(json(handIn))
                        .getBytes(StandardCharsets.UTF_8);
        try {
            final byte[] sha = MessageDigest.getInstance("SHA-256").digest(text);
            return HexFormat.of().formatHex(sha, 0, 8);
        } catch (final NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /**
     * Reads it.
     *
     * @throws tools.jackson.core.JacksonException where it is not JSON
     * @throws wireworthy.practice.Unfit where an entry is missing or not as it should be
     * @throws EveningProblem where it is no hand-in, or was changed since it was written
     */
    static HandIn read(final String text) {
        final Entry root = Located.parse(text).root();
        if (!root.isObject() || !root.has(KIND) || !text(root.at(KIND), 20).equals(HAND_IN)) {
            throw EveningProblem.of("hand-in.none");
        }
        if (root.at("version").whole(1, Integer.MAX_VALUE) != VERSION) {
            throw EveningProblem.of("hand-in.version");
        }
        root.only(KEYS);
        final HandIn handIn = handIn(root);
        if (!text(root.at("checksum"), 16).equals(checksum(handIn))) {
            throw EveningProblem.of("hand-in.changed");
        }
        return handIn;
    }

    private static HandIn handIn(final Entry root) {
        final List<Reply> replies = new ArrayList<>();
        final Entry list = root.at("replies");
        if (!list.isArray()) {
            throw EveningProblem.of("hand-in.no-list");
        }
        if (!list.json().isEmpty()) {
            list.list(Pick.MOST_PROBLEMS).forEach(each -> replies.add(reply(each)));
        }
        return new HandIn(
                text(root.at("mark"), 60),
                root.at("learner").whole(1, SheetPlan.MOST_LEARNERS),
                text(root.at("name"), LONGEST_NAME),
                time(root.at("begun")),
                replies);
    }

    private static Reply reply(final Entry entry) {
        entry.only(REPLY);
        return new Reply(
                entry.at("problem").whole(1, Pick.MOST_PROBLEMS),
                entry.at("typed").list(MOST_ANSWERS).stream()
                        .map(each -> text(each, Reply.LONGEST))
                        .toList(),
                entry.at("help").yes(),
                time(entry.at("at")));
    }

    /** A text, which may be empty. */
    private static String text(final Entry entry, final int most) {
        final boolean blank = entry.isText() && entry.json().stringValue().isBlank();
        return blank ? "" : entry.text(most);
    }

    private static Instant time(final Entry entry) {
        try {
            return Instant.parse(entry.text(40));
        } catch (final DateTimeException e) {
            throw EveningProblem.of("hand-in.no-time");
        }
    }
}
