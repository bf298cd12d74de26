package wireworthy.practice;

import java.time.Duration;

/**
 * Answers with no long pause between them. One lasts 12 to 20 minutes and ends on a right answer.
 *
 * @param from second of its first answer
 * @param to second of its last answer
 * @param problems how many were answered; the answers to one count once
 * @param reviews how many of them were of skills that were due or had worked loose
 * @param lastRight whether the last was right unaided
 */
public record Sitting(long from, long to, int problems, int reviews, boolean lastRight) {
    /** Before the first answer of all. */
    static final Sitting NONE = new Sitting(0, 0, 0, 0, false);

    /** A longer pause begins another sitting: common practice, no source. */
    private static final Duration PAUSE = Duration.ofMinutes(30);

    private static final Duration SHORTEST = Duration.ofMinutes(12);
    private static final Duration CLOSING = Duration.ofMinutes(17);
    private static final double REVIEWS = 0.4;

    /** Few who practise at all do fewer, so that reviews can come first. */
    private static final int USUAL = 5;

    /**
     * With one more answer.
     *
     * @param more whether it is of another problem than the one before
     * @param review whether that was of a skill that was to come back
     */
    Sitting with(final Answered answer, final boolean more, final boolean review) {
        final Sitting before = at(answer.at());
        final boolean first = before.problems == 0;
        return new Sitting(
                first ? answer.at().second() : before.from,
                answer.at().second(),
                before.problems + (first || more ? 1 : 0),
                before.reviews + (review && (first || more) ? 1 : 0),
                answer.rightUnaided());
    }

    /** This sitting while it lasts, else an empty one. */
    public Sitting at(final Moment now) {
        return Math.abs(now.second() - to) > PAUSE.toSeconds() ? NONE : this;
    }

    /** How long it has lasted. */
    public Duration lasted(final Moment now) {
        return problems == 0 ? Duration.ZERO : Duration.ofSeconds(Math.max(0, now.second() - from));
    }

    /** Whether now is a good moment to stop: long enough, and the last answer was right. */
    public boolean mayEnd(final Moment now) {
        return lastRight && lasted(now).compareTo(SHORTEST) >= 0;
    }

    /** Whether what comes now should be likely to go right, so that it can be the last. */
    boolean closing(final Moment now) {
        return lasted(now).compareTo(CLOSING) >= 0;
    }

    /** Whether one more review keeps them at two fifths of what will be a sitting. */
    boolean takesReview() {
        return reviews + 1 <= REVIEWS * Math.max(USUAL, problems + 1);
    }

    /** Whether so few were answered that reviews come before all else. */
    boolean beginning() {
        return problems < USUAL;
    }
}
