package wireworthy.practice;

/**
 * What comes next.
 *
 * @param seed for the numbers
 * @param why in one line, for the learner
 * @param hunt whether a slip is to be found in its working rather than its figure
 */
public record Choice(Template template, long seed, String why, boolean hunt) {
    /** A template's own exercise. */
    Choice(final Template template, final long seed, final String why) {
        this(template, seed, why, false);
    }
}
