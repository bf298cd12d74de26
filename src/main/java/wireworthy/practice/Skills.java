package wireworthy.practice;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import wireworthy.rules.Skill;

/**
 * How firmly each skill of one learner holds: a logistic over decaying counts with one ability
 * shared by all skills, folded over the answers in their order.
 */
public final class Skills {
    private final Map<Skill, Memory> memories = new EnumMap<>(Skill.class);
    private double ability;
    private int answers;
    private long today = Long.MIN_VALUE;
    private int answersToday;
    private int reviewsToday;

    private Skills() {}

    /** From all answers of a learner, oldest first. */
    public static Skills of(final List<Answered> answered) {
        final Skills skills = new Skills();
        answered.forEach(skills::add);
        return skills;
    }

    private void add(final Answered answer) {
        countToday(answer);
        final Memory before = memory(answer.skill());
        final double chance = before.chance(ability, answer.day(), answer.difficulty());
        final double error = (answer.rightUnaided() ? 1 : 0) - chance;
        ability += 0.35 / (1 + 0.05 * answers) * error;
        answers++;
        memories.put(answer.skill(), before.with(answer, error).settled(ability, before));
    }

    private void countToday(final Answered answer) {
        if (answer.day() != today) {
            today = answer.day();
            answersToday = 0;
            reviewsToday = 0;
        }
        answersToday++;
        if (state(answer.skill(), answer.day()) == SkillState.WORKED_LOOSE) {
            reviewsToday++;
        }
    }

    Memory memory(final Skill skill) {
        return memories.getOrDefault(skill, Memory.NONE);
    }

    /** How likely an unaided answer on a day is right; difficulty -1, 0 or 1. */
    public double chance(final Skill skill, final long day, final int difficulty) {
        return memory(skill).chance(ability, day, difficulty);
    }

    /** How firmly a skill holds on a day. */
    public SkillState state(final Skill skill, final long day) {
        return memory(skill).state(ability, day);
    }

    /** How many answers a skill has had. */
    public int answers(final Skill skill) {
        return memory(skill).answers();
    }

    /** How many of a skill's last answers in a row were right unaided; no more than four count. */
    public int running(final Skill skill) {
        final List<Boolean> last = memory(skill).lastFour();
        return last.size() - 1 - last.lastIndexOf(false);
    }

    /** The day of the last answer of a skill; meaningless while it is untried. */
    public long lastDay(final Skill skill) {
        return memory(skill).lastDay();
    }

    /** The day on which a skill that holds is to be asked again; the largest long before. */
    public long due(final Skill skill) {
        return memory(skill).due();
    }

    int answersOn(final long day) {
        return day == today ? answersToday : 0;
    }

    int reviewsOn(final long day) {
        return day == today ? reviewsToday : 0;
    }
}
