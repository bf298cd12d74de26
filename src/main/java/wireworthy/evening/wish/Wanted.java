package wireworthy.evening.wish;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wireworthy.evening.Difficulty;
import wireworthy.evening.Pick;
import wireworthy.evening.SystemVoltage;
import wireworthy.record.WireSizes;
import wireworthy.rules.Skill;

/**
 * Which problems a leader wants. Anything may be empty as long as nothing is made of it.
 *
 * @param oneByOne whether single problems are picked, not skills
 * @param templates the single problems, by bank and template
 * @param sizes how cable is sold; empty for either way
 * @param ownBanks whether the leader's own banks count
 */
public record Wanted(
        boolean oneByOne,
        List<String> templates,
        Set<Skill> skills,
        int problems,
        Set<Difficulty> difficulties,
        Optional<WireSizes> sizes,
        Set<SystemVoltage> voltages,
        boolean ownBanks) {
    /** What stands there before anything was chosen. */
    public static final Wanted USUAL =
            new Wanted(
                    false,
                    List.of(),
                    EnumSet.of(Skill.CURRENT_FROM_POWER, Skill.DROP, Skill.FUSE_CHOICE),
                    8,
                    EnumSet.allOf(Difficulty.class),
                    Optional.empty(),
                    EnumSet.allOf(SystemVoltage.class),
                    false);

    public Wanted {
        templates = List.copyOf(templates);
        skills = Set.copyOf(skills);
        difficulties = Set.copyOf(difficulties);
        voltages = Set.copyOf(voltages);
    }

    /** What was picked, as a sheet has it. */
    public static Wanted of(final Pick pick, final boolean ownBanks) {
        if (pick instanceof Pick.BySkills by) {
            return new Wanted(
                    false,
                    List.of(),
                    by.skills(),
                    by.problems(),
                    by.difficulties(),
                    by.sizes(),
                    by.voltages(),
                    ownBanks);
        }
        return USUAL.withOwnBanks(ownBanks)
                .withOneByOne(true)
                .withTemplates(((Pick.ByTemplates) pick).ids());
    }

    /**
     * The pick.
     *
     * @throws wireworthy.evening.EveningProblem where something is left out
     */
    public Pick pick() {
        return oneByOne
                ? new Pick.ByTemplates(templates)
                : new Pick.BySkills(skills, problems, difficulties, sizes, voltages);
    }

    /** The same of all skills. */
    public Pick.BySkills ofAllSkills() {
        return new Pick.BySkills(
                EnumSet.allOf(Skill.class), problems, difficulties, sizes, voltages);
    }

    public Wanted withOneByOne(final boolean now) {
        return new Wanted(
                now, templates, skills, problems, difficulties, sizes, voltages, ownBanks);
    }

    public Wanted withTemplates(final List<String> now) {
        return new Wanted(oneByOne, now, skills, problems, difficulties, sizes, voltages, ownBanks);
    }

    public Wanted withSkills(final Set<Skill> now) {
        return new Wanted(
                oneByOne, templates, now, problems, difficulties, sizes, voltages, ownBanks);
    }

    public Wanted withProblems(final int now) {
        return new Wanted(
                oneByOne, templates, skills, now, difficulties, sizes, voltages, ownBanks);
    }

    public Wanted withDifficulties(final Set<Difficulty> now) {
        return new Wanted(oneByOne, templates, skills, problems, now, sizes, voltages, ownBanks);
    }

    public Wanted withSizes(final Optional<WireSizes> now) {
        return new Wanted(
                oneByOne, templates, skills, problems, difficulties, now, voltages, ownBanks);
    }

    public Wanted withVoltages(final Set<SystemVoltage> now) {
        return new Wanted(
                oneByOne, templates, skills, problems, difficulties, sizes, now, ownBanks);
    }

    public Wanted withOwnBanks(final boolean now) {
        return new Wanted(
                oneByOne, templates, skills, problems, difficulties, sizes, voltages, now);
    }
}
