package wireworthy.window.stand;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeMap;
import java.util.stream.Collectors;
import wireworthy.practice.Prerequisites;
import wireworthy.practice.SkillState;
import wireworthy.practice.Skills;
import wireworthy.practice.Standing;
import wireworthy.record.Answer;
import wireworthy.record.HeldDay;
import wireworthy.rules.Skill;

/**
 * Where a learner stands on a day.
 *
 * @param today counted from 1 January 1970
 * @param skills all there are, in their own order
 * @param held how many held over time, oldest first; today is not among them
 */
public record Stand(long today, Map<Skill, SkillStand> skills, List<Held> held) {
    private static final int WEEKS = 4;

    public Stand {
        skills = new EnumMap<>(skills);
        held = List.copyOf(held);
    }

    /**
     * From what is on record.
     *
     * @param days all there are, oldest first
     * @param lately the last answers; those of the last four weeks count
     */
    public static Stand of(
            final Standing standing,
            final List<HeldDay> days,
            final List<Answer> lately,
            final long today) {
        final Map<Skill, List<Answer>> bySkill =
                lately.stream()
                        .filter(answer -> answer.day() > today - WEEKS * 7)
                        .collect(Collectors.groupingBy(Answer::skill));
        final Map<Skill, SkillStand> all = new EnumMap<>(Skill.class);
        for (final Skill skill : Skill.values()) {
            final List<SlipAgain> again = SlipAgain.of(bySkill.getOrDefault(skill, List.of()));
            all.put(skill, of(standing.skills(), skill, today, again));
        }
        return new Stand(today, all, Held.of(days));
    }

    private static SkillStand of(
            final Skills skills, final Skill skill, final long today, final List<SlipAgain> again) {
        final int tries = skills.answers(skill);
        return new SkillStand(
                skill,
                skills.state(skill, today),
                tries,
                tries == 0 ? OptionalLong.empty() : OptionalLong.of(skills.lastDay(skill)),
                known(skills.since(skill)),
                known(skills.due(skill)),
                skills.stuck(skill, today),
                again);
    }

    private static OptionalLong known(final long day) {
        return day == Long.MAX_VALUE ? OptionalLong.empty() : OptionalLong.of(day);
    }

    /** How one skill stands. */
    public SkillStand of(final Skill skill) {
        return skills.getOrDefault(skill, of(Skills.NONE, skill, today, List.of()));
    }

    /** How many skills are in each state; only states that there are. */
    public Map<SkillState, Long> counts() {
        return skills.values().stream()
                .collect(
                        Collectors.groupingBy(
                                SkillStand::state,
                                () -> new EnumMap<>(SkillState.class),
                                Collectors.counting()));
    }

    /** How many are snug or tight today. */
    public long holding() {
        return skills.values().stream().filter(SkillStand::holds).count();
    }

    /**
     * The day of the last answer where the clock of the machine stands on an earlier one: then what
     * is due waits for the clock.
     */
    public OptionalLong clockBehind() {
        return skills.values().stream().flatMapToLong(each -> each.last().stream()).max().stream()
                .filter(last -> last > today)
                .findFirst();
    }

    /**
     * What asks to be looked at first: worked loose, then due, then loose, then what was never
     * tried.
     */
    public SkillStand first() {
        return rows().stream()
                .flatMap(List::stream)
                .map(this::of)
                .min(Comparator.comparing(each -> URGENCY.indexOf(each.state())))
                .orElseThrow();
    }

    private static final List<SkillState> URGENCY =
            List.of(
                    SkillState.WORKED_LOOSE,
                    SkillState.DUE,
                    SkillState.LOOSE,
                    SkillState.UNTRIED,
                    SkillState.SNUG,
                    SkillState.TIGHT);

    /** The skills in rows: each stands only on skills of rows above it. */
    public static List<List<Skill>> rows() {
        final Map<Integer, List<Skill>> rows = new TreeMap<>();
        for (final Skill skill : Skill.values()) {
            rows.computeIfAbsent(depth(skill), row -> new ArrayList<>()).add(skill);
        }
        return List.copyOf(rows.values());
    }

    private static int depth(final Skill skill) {
        return Prerequisites.of(skill).stream().mapToInt(Stand::depth).max().orElse(-1) + 1;
    }

    /** The skills that stand directly on one. */
    public static List<Skill> on(final Skill skill) {
        return Arrays.stream(Skill.values())
                .filter(each -> Prerequisites.of(each).contains(skill))
                .toList();
    }
}
