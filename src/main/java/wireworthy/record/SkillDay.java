package wireworthy.record;

import wireworthy.practice.SkillState;
import wireworthy.rules.Skill;

/**
 * How a skill stood at the end of a day on which it was answered.
 *
 * @param day counted from 1 January 1970
 * @param tries how many answers that day
 * @param unaided how many of them were right without help
 * @param chance that the next answer would be right
 */
public record SkillDay(
        long day, Skill skill, int tries, int unaided, double chance, SkillState state) {
    SkillDay plus(final SkillDay later) {
        return new SkillDay(
                day,
                skill,
                tries + later.tries,
                unaided + later.unaided,
                later.chance,
                later.state);
    }
}
