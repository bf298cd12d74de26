package wireworthy.evening.handin;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;

/**
 * What a learner put down for one problem.
 *
 * @param problem its number, from 1
 * @param typed a text for each answer asked for, without blanks around it; empty where there is
 *     none
 * @param wantsHelp whether they would like it explained
 * @param at when it was last changed, kept to the millisecond
 */
public record Reply(int problem, List<String> typed, boolean wantsHelp, Instant at) {
    /** The most signs of an answer that are kept. */
    static final int LONGEST = 200;

    public Reply {
        typed = typed.stream().map(String::strip).map(Reply::cut).toList();
        at = at.truncatedTo(ChronoUnit.MILLIS);
    }

    /** Whether these very answers stand in it. */
    public boolean holds(final List<String> others) {
        return typed.equals(new Reply(problem, others, wantsHelp, at).typed);
    }

    private static String cut(final String text) {
        return text.substring(0, Math.min(LONGEST, text.length()));
    }
}
