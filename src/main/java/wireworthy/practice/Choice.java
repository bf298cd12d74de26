package wireworthy.practice;

import java.util.List;

/**
 * What comes next.
 *
 * @param seed for the numbers
 * @param reason for which it was chosen
 * @param hunt whether a slip is to be found in its working rather than its figure
 */
public record Choice(Template template, long seed, Reason reason, boolean hunt) {
    /** A template's own exercise. */
    Choice(final Template template, final long seed, final Reason reason) {
        this(template, seed, reason, false);
    }

    /** Why it was chosen, in one line, for the learner. */
    public String why() {
        return reason.text(template, template.skill());
    }

    /**
     * The same once its numbers are drawn: a hidden slip may be one of the learner's own or not,
     * and belongs to the skill of its line.
     *
     * @param own slips made lately
     */
    public String why(final Exercise drawn, final List<String> own) {
        if (drawn instanceof SlipHunt found && reason != Reason.ANOTHER) {
            return (found.isOf(own) ? Reason.OWN_HUNT : Reason.HUNT).text(template, drawn.skill());
        }
        return why();
    }
}
