package wireworthy.practice;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import wireworthy.rules.Skill;

/**
 * How firmly each skill of one learner holds: a logistic over decaying counts with one ability
 * shared by all skills, folded over the answers in their order, and the learner's own slope.
 *
 * @param ability shared by all skills
 * @param slope of the learner's answers against the formula
 * @param answers how many there were
 * @param memories what the answers of each skill left behind; an untried skill has none
 */
public record Skills(double ability, Slope slope, int answers, Map<Skill, Memory> memories) {
    /** Before the first answer. */
    public static final Skills NONE = new Skills(0, Slope.UNKNOWN, 0, Map.of());

    public Skills {
        final Map<Skill, Memory> copy = new EnumMap<>(Skill.class);
        copy.putAll(memories);
        memories = Collections.unmodifiableMap(copy);
    }

    /** From all answers of a learner, oldest first. */
    public static Skills of(final List<Answered> answered) {
        Skills skills = NONE;
        for (final Answered each : answered) {
            skills = skills.with(each);
        }
        return skills;
    }

    /** With one more answer. */
    public Skills with(final Answered answer) {
        final Memory before = memory(answer.skill());
        final double odds = before.logOdds(ability, answer.day(), answer.difficulty());
        final double error = (answer.rightUnaided() ? 1 : 0) - Slope.sigmoid(odds);
        final double abler = ability + 0.35 / (1 + 0.05 * answers) * error;
        final Slope steeper = slope.with(odds, answer.rightUnaided());
        final Memory after = before.with(answer, error);
        final double next = steeper.chance(after.logOdds(abler, after.lastDay(), 0));
        final Map<Skill, Memory> all = new EnumMap<>(Skill.class);
        all.putAll(memories);
        all.put(answer.skill(), after.settled(next, before));
        return new Skills(abler, steeper, answers + 1, all);
    }

    Memory memory(final Skill skill) {
        return memories.getOrDefault(skill, Memory.NONE);
    }

    /** How likely an unaided answer on a day is right; difficulty -1, 0 or 1. */
    public double chance(final Skill skill, final long day, final int difficulty) {
        return slope.chance(memory(skill).logOdds(ability, day, difficulty));
    }

    /** The same by the formula alone, without the learner's own slope. */
    double byFormula(final Skill skill, final long day, final int difficulty) {
        return Slope.sigmoid(memory(skill).logOdds(ability, day, difficulty));
    }

    /** How firmly a skill holds on a day. */
    public SkillState state(final Skill skill, final long day) {
        return memory(skill).state(chance(skill, day, 0), day);
    }

    /** How many answers a skill has had. */
    public int answers(final Skill skill) {
        return memory(skill).answers();
    }

    /** How many of a skill's last answers in a row were right unaided; no more than four count. */
    public int running(final Skill skill) {
        return memory(skill).running();
    }

    /** The day of the last answer of a skill; meaningless while it is untried. */
    public long lastDay(final Skill skill) {
        return memory(skill).lastDay();
    }

    /** The day since which a skill has been snug or tight; the largest long before it is. */
    public long since(final Skill skill) {
        return memory(skill).since();
    }

    /** The day on which a skill that holds is to be asked again; the largest long before. */
    public long due(final Skill skill) {
        return memory(skill).due();
    }

    /** Whether a skill is left for another day, after many tries of which no three ran right. */
    public boolean stuck(final Skill skill, final long day) {
        return memory(skill).stuck(day);
    }
}
