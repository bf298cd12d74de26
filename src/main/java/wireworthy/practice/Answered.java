package wireworthy.practice;

import wireworthy.rules.Skill;

/**
 * An answer as far as the skills are concerned.
 *
 * @param day counted in days from any fixed one
 * @param aided given after some help with the same problem
 * @param difficulty -1, 0 or 1
 * @param template full id of the template
 * @param seed of its numbers
 */
public record Answered(
        Skill skill,
        long day,
        boolean right,
        boolean aided,
        int difficulty,
        String template,
        long seed) {
    /** Right without help. */
    public boolean rightUnaided() {
        return right && !aided;
    }
}
