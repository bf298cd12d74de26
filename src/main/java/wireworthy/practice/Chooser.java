package wireworthy.practice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wireworthy.rules.Skill;

/**
 * Chooses the next problem from what was answered before: after an error one like it, a new skill
 * twice in a row, then a mixture of what is due and of up to four open skills. The same history and
 * seed always give the same choice.
 */
public final class Chooser {
    private static final double WANTED = 0.8;
    private static final double READY = 0.7;
    private static final int OPEN = 4;
    private static final double REVIEWS = 0.4;
    private static final int SEEDS = 1_000_000;
    private static final int ONE_WHOLE_JOB_IN = 6;
    private static final int ONE_HUNT_IN = 8;
    private static final double HUNTED = 0.6;

    private final List<Template> templates;
    private final Lately lately;
    private final long day;
    private final Skills skills;
    private final SplitMix random;

    private Chooser(
            final List<Template> templates,
            final List<Answered> history,
            final long day,
            final long seed) {
        this.templates = templates;
        this.lately = new Lately(history, day);
        this.day = day;
        this.skills = Skills.of(history);
        this.random = SplitMix.of(seed + "/" + history.size());
    }

    /**
     * The next problem.
     *
     * @param templates those of the chosen topics
     * @param history all answers of the learner, oldest first
     * @param day today
     * @return empty only where there are no templates
     */
    public static Optional<Choice> next(
            final List<Template> templates,
            final List<Answered> history,
            final long day,
            final long seed) {
        final Chooser chooser = new Chooser(templates, history, day, seed);
        return chooser.afterError()
                .or(chooser::openingPair)
                .or(chooser::wholeJob)
                .or(chooser::review)
                .or(chooser::weakestPrerequisite)
                .or(chooser::open)
                .or(chooser::anything)
                .map(chooser::sometimesHunted);
    }

    /** The same template with other numbers. */
    public static Choice twin(final Exercise problem) {
        final long other = SplitMix.of("twin/" + problem.seed()).below(SEEDS - 1) + 1L;
        final long seed = other == problem.seed() ? other + 1 : other;
        return new Choice(problem.template(), seed, "One like it, with other numbers");
    }

    private Choice choice(final Template template, final String why) {
        return new Choice(template, random.below(SEEDS) + 1L, why);
    }

    private Optional<Choice> afterError() {
        final List<Answered> running = lately.lastOfOneTemplate();
        final long problems = running.stream().mapToLong(Answered::seed).distinct().count();
        if (problems != 1 || running.stream().allMatch(Answered::rightUnaided)) {
            return Optional.empty();
        }
        return templates.stream()
                .filter(t -> t.fullId().equals(running.get(0).template()))
                .findFirst()
                .map(t -> choice(t, OneLikeIt.why(running)));
    }

    private Optional<Choice> openingPair() {
        return lately.last()
                .map(Answered::skill)
                .filter(skill -> skills.answers(skill) == 1)
                .flatMap(skill -> best(templatesOf(Set.of(skill))))
                .map(t -> choice(t, "Still new: " + t.skill().words() + ", a second time"));
    }

    /** One in six, of those whose sums are likely to go right each on its own. */
    private Optional<Choice> wholeJob() {
        if (random.below(ONE_WHOLE_JOB_IN) > 0) {
            return Optional.empty();
        }
        final List<Template> ready =
                templates.stream()
                        .filter(Template::wholeJob)
                        .filter(template -> mixes(template.skill()) && ready(template.skill()))
                        .toList();
        return best(ready).map(t -> choice(t, "A whole job, one figure after the other"));
    }

    /** Where the last skill is stuck: the one it stands on that is likeliest to go wrong. */
    private Optional<Choice> weakestPrerequisite() {
        return lately.last()
                .map(Answered::skill)
                .filter(lately::stuck)
                .flatMap(
                        stuck ->
                                Prerequisites.of(stuck).stream()
                                        .filter(offered()::contains)
                                        .filter(skill -> !lately.stuck(skill))
                                        .min(Comparator.comparingDouble(this::chance)))
                .flatMap(skill -> best(templatesOf(Set.of(skill))))
                .map(t -> choice(t, "First what it stands on: " + t.skill().words()));
    }

    private double chance(final Skill skill) {
        return skills.chance(skill, day, 0);
    }

    /** One in eight, of what is likely to go right, as a working with a slip to be found. */
    private Choice sometimesHunted(final Choice choice) {
        final Template template = choice.template();
        final boolean hunted =
                template.asksFigures()
                        && !template.wholeJob()
                        && skills.answers(template.skill()) > 2
                        && chance(template.skill()) >= HUNTED
                        && random.below(ONE_HUNT_IN) == 0;
        return hunted
                ? new Choice(
                        template,
                        choice.seed(),
                        "One with a slip in it: " + template.skill().words(),
                        true)
                : choice;
    }

    private Optional<Choice> review() {
        if (skills.reviewsOn(day) + 1 > REVIEWS * (skills.answersOn(day) + 1)) {
            return Optional.empty();
        }
        return offered().stream()
                .filter(this::mixes)
                .filter(skill -> skills.state(skill, day) == SkillState.WORKED_LOOSE)
                .min(Comparator.comparingLong(skills::due))
                .flatMap(skill -> best(templatesOf(Set.of(skill))))
                .map(t -> choice(t, "Worked loose: " + t.skill().words() + " is due again"));
    }

    private Optional<Choice> open() {
        final Set<Skill> open =
                offered().stream()
                        .filter(this::loose)
                        .filter(this::ready)
                        .filter(skill -> !lately.stuck(skill))
                        .sorted(Comparator.comparing(skill -> skills.answers(skill) == 0))
                        .limit(OPEN)
                        .filter(this::mixes)
                        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Skill.class)));
        return best(templatesOf(open)).map(t -> choice(t, whyOpen(t.skill())));
    }

    private String whyOpen(final Skill skill) {
        return (skills.answers(skill) == 0 ? "New: " : "Still loose: ") + skill.words();
    }

    /** Nothing is open: what was asked longest ago, or else what is least far off. */
    private Optional<Choice> anything() {
        final Comparator<Skill> byChance = Comparator.comparingDouble(skill -> -chance(skill));
        final Comparator<Skill> byDay =
                Comparator.comparingLong(
                        skill -> skills.answers(skill) == 0 ? day : skills.lastDay(skill));
        return offered().stream()
                .sorted(
                        Comparator.comparing((Skill skill) -> !mixes(skill))
                                .thenComparing(byDay)
                                .thenComparing(byChance))
                .findFirst()
                .flatMap(skill -> best(templatesOf(Set.of(skill))))
                .map(t -> choice(t, "To keep it firm: " + t.skill().words()));
    }

    private boolean loose(final Skill skill) {
        final SkillState state = skills.state(skill, day);
        return state == SkillState.UNTRIED || state == SkillState.LOOSE;
    }

    /** Whether all it stands on, as far as it can be practised here, is likely to go right. */
    private boolean ready(final Skill skill) {
        final Set<Skill> offered = offered();
        return Prerequisites.of(skill).stream()
                .filter(offered::contains)
                .allMatch(needed -> chance(needed) >= READY);
    }

    /** Never one skill twice running. */
    private boolean mixes(final Skill skill) {
        return lately.last().filter(a -> a.skill() == skill).isEmpty();
    }

    private Set<Skill> offered() {
        return templates.stream()
                .map(Template::skill)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Skill.class)));
    }

    private List<Template> templatesOf(final Set<Skill> wanted) {
        return templates.stream().filter(t -> wanted.contains(t.skill())).toList();
    }

    /**
     * The one whose chance is nearest to {@value #WANTED}; of equals one seldom asked, then the
     * skill that comes first while it is new, then lots.
     */
    private Optional<Template> best(final List<Template> among) {
        final Comparator<Template> order =
                Comparator.comparingDouble(this::offWanted)
                        .thenComparingLong(lately::asked)
                        .thenComparing(this::skillWhileNew);
        final List<Template> equals = new ArrayList<>();
        among.stream()
                .min(order)
                .ifPresent(
                        first ->
                                among.stream()
                                        .filter(t -> order.compare(t, first) == 0)
                                        .forEach(equals::add));
        return equals.isEmpty()
                ? Optional.empty()
                : Optional.of(equals.get(random.below(equals.size())));
    }

    private double offWanted(final Template template) {
        return Math.abs(skills.chance(template.skill(), day, template.difficulty()) - WANTED);
    }

    /** New skills in their order; before them all that are not new. */
    private Skill skillWhileNew(final Template template) {
        return skills.answers(template.skill()) == 0 ? template.skill() : Skill.UNITS_AND_PREFIXES;
    }
}
