package wireworthy.practice;

import wireworthy.rules.Skill;

/**
 * An answer as far as the skills are concerned.
 *
 * @param at when it was given
 * @param aided given after some help with the same problem
 * @param slipped whether a known slip explains it
 * @param difficulty -1, 0 or 1
 * @param template full id of the template
 * @param seed of its numbers
 */
public record Answered(
        Skill skill,
        Moment at,
        boolean right,
        boolean aided,
        boolean slipped,
        int difficulty,
        String template,
        long seed) {
    /** Right without help. */
    public boolean rightUnaided() {
        return right && !aided;
    }

    /** Whether both are of the same template, be it with other numbers. */
    boolean ofSameTemplate(final Answered other) {
        return template.equals(other.template);
    }

    /** Whether both are answers to the same numbers. */
    boolean ofSameProblem(final Answered other) {
        return ofSameTemplate(other) && seed == other.seed;
    }

    /** The day it was given on. */
    public long day() {
        return at.day();
    }
}
