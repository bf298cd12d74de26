package wireworthy.practice;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import wireworthy.rules.Skill;

/**
 * Chooses the next problem from where the learner stands: after an error one like it, a new skill
 * twice in a row, then a mixture of what is due and of up to four open skills. The same standing
 * and seed always give the same choice.
 */
public final class Chooser {
    private static final int SEEDS = 1_000_000;
    private static final int ONE_WHOLE_JOB_IN = 6;
    private static final int ONE_HUNT_IN = 8;
    private static final double HUNTED = 0.6;
    private static final int DAYS_OF_A_SLIP = 7;

    private final Standing standing;
    private final Skills skills;
    private final Moment now;
    private final SplitMix random;
    private final Offer offer;
    private final Predicate<Template> hunts;
    private final boolean passing;

    private Chooser(
            final List<Template> templates,
            final Standing standing,
            final Moment now,
            final long seed,
            final Predicate<Template> hunts,
            final Predicate<Template> wanted) {
        this.hunts = hunts;
        this.passing = !templates.stream().allMatch(wanted);
        this.standing = standing;
        this.skills = standing.skills();
        this.now = now;
        this.random = SplitMix.of(seed + "/" + skills.answers());
        this.offer = new Offer(templates, wanted, standing, now, random);
    }

    /**
     * The next problem, where any working may have a slip hidden in it.
     *
     * @param templates those of the chosen topics
     * @return empty only where there are no templates
     */
    public static Optional<Choice> next(
            final List<Template> templates,
            final Standing standing,
            final Moment now,
            final long seed) {
        return next(templates, standing, now, seed, template -> true, template -> true);
    }

    /**
     * The next problem.
     *
     * @param templates those of the chosen topics
     * @param hunts in whose working a slip can be hidden
     * @param wanted what the learner has not passed by
     * @return empty only where there are no templates
     */
    public static Optional<Choice> next(
            final List<Template> templates,
            final Standing standing,
            final Moment now,
            final long seed,
            final Predicate<Template> hunts,
            final Predicate<Template> wanted) {
        final Chooser chooser = new Chooser(templates, standing, now, seed, hunts, wanted);
        return chooser.afterError()
                .or(chooser::openingPair)
                .or(chooser::closing)
                .or(chooser::reviewFirst)
                .or(chooser::hunt)
                .or(chooser::wholeJob)
                .or(chooser::review)
                .or(chooser::weakestPrerequisite)
                .or(chooser::easier)
                .or(chooser::open)
                .or(chooser::anything);
    }

    /**
     * A problem of a skill that the learner chose, whatever came before.
     *
     * @return empty only where none of the templates is of this skill
     */
    public static Optional<Choice> of(
            final Skill skill,
            final List<Template> templates,
            final Standing standing,
            final Moment now,
            final long seed) {
        final Chooser chooser =
                new Chooser(templates, standing, now, seed, template -> false, template -> true);
        return chooser.best(skill).map(t -> chooser.choice(t, Reason.CHOSEN));
    }

    /**
     * Whether a slip may be hidden in a line of this skill: only where it is likely to be seen, and
     * never in the skill just answered.
     */
    public static boolean hunts(final Skill skill, final Standing standing, final Moment now) {
        return standing.last().filter(a -> a.skill() == skill).isEmpty()
                && standing.skills().answers(skill) > 2
                && standing.skills().chance(skill, now.day(), 0) >= HUNTED;
    }

    /** The same template with other numbers. */
    public static Choice twin(final Exercise problem) {
        final long other = SplitMix.of("twin/" + problem.seed()).below(SEEDS - 1) + 1L;
        final long seed = other == problem.seed() ? other + 1 : other;
        return new Choice(problem.template(), seed, Reason.ANOTHER);
    }

    private Choice choice(final Template template, final Reason reason) {
        return new Choice(template, random.below(SEEDS) + 1L, reason);
    }

    private Optional<Template> best(final Skill skill) {
        return offer.best(Set.of(skill));
    }

    private Optional<Choice> afterError() {
        final List<Answered> running = standing.lastOfOneTemplate(now.day());
        final long problems = running.stream().mapToLong(Answered::seed).distinct().count();
        if (problems != 1 || running.stream().allMatch(Answered::rightUnaided)) {
            return Optional.empty();
        }
        return offer.template(running.get(0).template()).map(t -> choice(t, Reason.twin(running)));
    }

    private Optional<Choice> openingPair() {
        return offer.lastMain()
                .filter(skill -> skills.answers(skill) == 1 && skills.lastDay(skill) == now.day())
                .flatMap(this::best)
                .map(t -> choice(t, Reason.OPENING_PAIR));
    }

    /** What is likely to go right, once the sitting has lasted long enough. */
    private Optional<Choice> closing() {
        return standing.sitting().at(now).closing(now)
                ? offer.likeliest(t -> offer.mixes(t.skill())).map(t -> choice(t, Reason.CLOSING))
                : Optional.empty();
    }

    /** One in eight, of what is likely to go right; own slips come first. */
    private Optional<Choice> hunt() {
        if (random.below(ONE_HUNT_IN) > 0) {
            return Optional.empty();
        }
        return offer.best(t -> huntable(t) && slippedLately(t.skill()))
                .map(t -> choice(t, Reason.OWN_HUNT))
                .or(() -> offer.best(this::huntable).map(t -> choice(t, Reason.HUNT)))
                .map(c -> new Choice(c.template(), c.seed(), c.reason(), true));
    }

    private boolean huntable(final Template template) {
        final Skill skill = template.skill();
        return template.asksFigures()
                && hunts.test(template)
                && !template.wholeJob()
                && offer.mixes(skill)
                && hunts(skill, standing, now);
    }

    private boolean slippedLately(final Skill skill) {
        return skills.memory(skill).slippedOn() > now.day() - DAYS_OF_A_SLIP;
    }

    /** One in six, of those whose sums are likely to go right each on its own. */
    private Optional<Choice> wholeJob() {
        if (random.below(ONE_WHOLE_JOB_IN) > 0) {
            return Optional.empty();
        }
        return offer.best(t -> t.wholeJob() && offer.mixes(t.skill()) && offer.ready(t.skill()))
                .map(t -> choice(t, Reason.WHOLE_JOB));
    }

    /** Many sittings are short: what is due comes at their beginning. */
    private Optional<Choice> reviewFirst() {
        return standing.sitting().at(now).beginning() ? review() : Optional.empty();
    }

    /** What is due or worked loose, the longest due first; at most two fifths of a sitting. */
    private Optional<Choice> review() {
        if (!standing.sitting().at(now).takesReview()) {
            return Optional.empty();
        }
        return offer.skillsWhere(offer::mixes)
                .filter(skill -> offer.state(skill).comesBack())
                .filter(skill -> !offer.stuck(skill))
                .min(Comparator.comparingLong(skills::due))
                .flatMap(this::best)
                .map(t -> choice(t, whyReview(t.skill())));
    }

    private Reason whyReview(final Skill skill) {
        return offer.state(skill) == SkillState.DUE ? Reason.REVIEW : Reason.SLACK;
    }

    /** Where the last skill is stuck: the one it stands on that is likeliest to go wrong. */
    private Optional<Choice> weakestPrerequisite() {
        return standing.last()
                .map(Answered::skill)
                .filter(offer::stuck)
                .flatMap(
                        stuck ->
                                offer.skillsWhere(Prerequisites.of(stuck)::contains)
                                        .filter(skill -> !offer.stuck(skill))
                                        .min(Comparator.comparingDouble(offer::chance)))
                .flatMap(this::best)
                .map(t -> choice(t, Reason.BELOW));
    }

    /** After one that was likely to go wrong, and before another such, one likely to go right. */
    private Optional<Choice> easier() {
        final boolean hard = standing.last().filter(a -> offer.hard(a.skill())).isPresent();
        return hard && bestOpen().filter(t -> !offer.hard(t)).isEmpty()
                ? offer.best(offer::likely).map(t -> choice(t, Reason.EASIER))
                : Optional.empty();
    }

    private Optional<Choice> open() {
        return bestOpen().map(t -> choice(t, offer.isNew(t.skill()) ? Reason.NEW : Reason.LOOSE));
    }

    private Optional<Template> bestOpen() {
        final Set<Skill> open = offer.open();
        open.removeIf(skill -> !offer.mixes(skill));
        return offer.best(open);
    }

    /** Nothing is open: what was asked longest ago, or else what is least far off. */
    private Optional<Choice> anything() {
        return offer.skillsWhere(skill -> true)
                .min(
                        Comparator.comparing((Skill skill) -> !offer.mixes(skill))
                                .thenComparing(offer::stuck)
                                .thenComparingLong(this::lastDay)
                                .thenComparingDouble(skill -> -offer.chance(skill)))
                .flatMap(this::best)
                .map(t -> choice(t, whyAnything(t.skill())));
    }

    private Reason whyAnything(final Skill skill) {
        return switch (offer.state(skill)) {
            case UNTRIED -> Reason.NEW;
            case DUE, WORKED_LOOSE -> whyReview(skill);
            case LOOSE, SNUG, TIGHT -> passing ? Reason.INSTEAD : Reason.KEEP;
        };
    }

    private long lastDay(final Skill skill) {
        return offer.isNew(skill) ? now.day() : skills.lastDay(skill);
    }
}
