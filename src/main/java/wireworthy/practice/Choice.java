package wireworthy.practice;

/**
 * What comes next.
 *
 * @param seed for the numbers
 * @param why in one line, for the learner
 */
public record Choice(Template template, long seed, String why) {}
