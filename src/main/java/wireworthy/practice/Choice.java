package wireworthy.practice;

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
        return reason.text(template);
    }
}
