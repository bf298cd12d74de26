package wireworthy.evening.handin;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The answers of one learner to one sheet.
 *
 * @param mark of the sheet
 * @param learner number in it, from 1
 * @param name code name; empty where there is none
 * @param begun when the sheet was opened, kept to the millisecond
 * @param replies in the order of the problems, one each
 */
public record HandIn(String mark, int learner, String name, Instant begun, List<Reply> replies) {
    public HandIn {
        name = name.strip();
        begun = begun.truncatedTo(ChronoUnit.MILLIS);
        replies = List.copyOf(replies);
    }

    /** Nothing answered yet. */
    public static HandIn begun(
            final String mark, final int learner, final String name, final Instant now) {
        return new HandIn(mark, learner, name, now, List.of());
    }

    /** The same with a reply, in place of an earlier one to that problem. */
    public HandIn with(final Reply reply) {
        final Stream<Reply> others =
                replies.stream().filter(each -> each.problem() != reply.problem());
        return new HandIn(
                mark,
                learner,
                name,
                begun,
                Stream.concat(others, Stream.of(reply))
                        .sorted((a, b) -> Integer.compare(a.problem(), b.problem()))
                        .toList());
    }

    /** The same under a code name; as it is where that is empty. */
    public HandIn named(final String other) {
        return other.isEmpty() ? this : new HandIn(mark, learner, other, begun, replies);
    }

    public Optional<Reply> reply(final int problem) {
        return replies.stream().filter(each -> each.problem() == problem).findFirst();
    }

    /** When it was last changed. */
    public Instant changed() {
        return replies.stream().map(Reply::at).max(Instant::compareTo).orElse(begun);
    }
}
