package wireworthy.practice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wireworthy.rules.Skill;

/** What there is to choose from, seen from where the learner stands. */
final class Offer {
    private static final double WANTED = 0.8;
    private static final double SIMILAR = 0.08;
    private static final double STALE = 0.13;
    private static final double READY = 0.7;
    private static final double HARD = 0.65;
    private static final double EASY = 0.9;
    private static final int OPEN = 4;

    private final List<Template> templates;
    private final List<Template> wanted;
    private final Standing standing;
    private final Moment now;
    private final SplitMix random;
    private final Set<Skill> offered;
    private final Set<Skill> skillsWanted;

    Offer(
            final List<Template> templates,
            final Predicate<Template> wanted,
            final Standing standing,
            final Moment now,
            final SplitMix random) {
        this.templates = templates;
        this.wanted = templates.stream().filter(wanted).toList();
        this.standing = standing;
        this.now = now;
        this.random = random;
        this.offered = skills(templates);
        this.skillsWanted = skills(this.wanted);
    }

    private static Set<Skill> skills(final List<Template> of) {
        return of.stream()
                .map(Template::skill)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Skill.class)));
    }

    private Skills skills() {
        return standing.skills();
    }

    Stream<Skill> skillsWhere(final Predicate<Skill> such) {
        return skillsWanted.stream().filter(such);
    }

    /** The template of this id, unless it was passed by. */
    Optional<Template> template(final String fullId) {
        return of(wanted, fullId);
    }

    private static Optional<Template> of(final List<Template> some, final String fullId) {
        return some.stream().filter(t -> t.fullId().equals(fullId)).findFirst();
    }

    boolean isNew(final Skill skill) {
        return skills().answers(skill) == 0;
    }

    SkillState state(final Skill skill) {
        return skills().state(skill, now.day());
    }

    double chance(final Skill skill) {
        return skills().chance(skill, now.day(), 0);
    }

    private double chance(final Template template) {
        return skills().chance(template.skill(), now.day(), template.difficulty());
    }

    /** Never one skill twice running: neither the one last answered nor that of its problem. */
    boolean mixes(final Skill skill) {
        return standing.last().filter(a -> a.skill() == skill).isEmpty()
                && lastMain().filter(skill::equals).isEmpty();
    }

    /** The skill for which the last problem was chosen. */
    Optional<Skill> lastMain() {
        return standing.last().flatMap(a -> of(templates, a.template())).map(Template::skill);
    }

    boolean hard(final Skill skill) {
        return chance(skill) < HARD;
    }

    boolean hard(final Template template) {
        return chance(template) < HARD;
    }

    /** Of another skill than the last, one that is likely to go right and is not due. */
    boolean likely(final Template template) {
        final Skill skill = template.skill();
        return mixes(skill)
                && !isNew(skill)
                && !state(skill).comesBack()
                && chance(template) >= READY;
    }

    boolean stuck(final Skill skill) {
        return skills().stuck(skill, now.day());
    }

    /** Whether all it stands on, as far as it can be practised here, is likely to go right. */
    boolean ready(final Skill skill) {
        return Prerequisites.of(skill).stream()
                .filter(offered::contains)
                .allMatch(needed -> chance(needed) >= READY);
    }

    /** Up to four that do not hold yet and can be practised; those that were begun come first. */
    Set<Skill> open() {
        return skillsWhere(this::loose)
                .filter(skill -> ready(skill) && !stuck(skill))
                .sorted(Comparator.comparing(this::isNew))
                .limit(OPEN)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Skill.class)));
    }

    private boolean loose(final Skill skill) {
        final SkillState state = state(skill);
        return state == SkillState.UNTRIED || state == SkillState.LOOSE;
    }

    /** The best template of one of these skills. */
    Optional<Template> best(final Set<Skill> skills) {
        return best(template -> skills.contains(template.skill()));
    }

    /**
     * Of the skill with the template whose chance is nearest to {@value #WANTED} one of about that
     * chance which was asked longest ago.
     */
    Optional<Template> best(final Predicate<Template> such) {
        return nearest(such).flatMap(it -> longestAgo(such, it));
    }

    /** Of equals one seldom asked lately, then the skill that comes first while new, then lots. */
    private Optional<Template> nearest(final Predicate<Template> such) {
        return first(
                such,
                Comparator.comparingDouble(this::offWanted)
                        .thenComparingLong(standing::asked)
                        .thenComparing(this::skillWhileNew));
    }

    private Optional<Template> longestAgo(final Predicate<Template> such, final Template nearest) {
        return first(
                each ->
                        such.test(each)
                                && each.skill() == nearest.skill()
                                && isSimilar(each, nearest),
                Comparator.comparingInt(standing::lastAsked).thenComparingDouble(this::offWanted));
    }

    /**
     * Neither much farther off than the nearest, nor too hard or too easy where that is not. One
     * asked more than once lately gives way to others all the same, be they harder.
     */
    private boolean isSimilar(final Template template, final Template nearest) {
        final double chance = chance(template);
        final boolean stale = standing.asked(nearest) > 1 && hard(nearest);
        final double least = stale ? 0 : HARD;
        final double most = chance(nearest) > EASY ? 1 : EASY;
        final double off = offWanted(nearest) + (stale ? STALE : SIMILAR);
        return offWanted(template) <= offWanted(nearest)
                || (chance >= least && chance <= most && offWanted(template) <= off);
    }

    /** The one most likely to go right. */
    Optional<Template> likeliest(final Predicate<Template> such) {
        return first(such, Comparator.comparingDouble(template -> -chance(template)));
    }

    private Optional<Template> first(
            final Predicate<Template> such, final Comparator<Template> order) {
        final List<Template> equals = new ArrayList<>();
        for (final Template each : wanted) {
            final int compared =
                    !such.test(each)
                            ? 1
                            : equals.isEmpty() ? 0 : order.compare(each, equals.get(0));
            if (compared < 0) {
                equals.clear();
            }
            if (compared <= 0) {
                equals.add(each);
            }
        }
        return equals.isEmpty()
                ? Optional.empty()
                : Optional.of(equals.get(random.below(equals.size())));
    }

    private double offWanted(final Template template) {
        return Math.abs(chance(template) - WANTED);
    }

    /** New skills in their order; before them all that are not new. */
    private Skill skillWhileNew(final Template template) {
        return isNew(template.skill()) ? template.skill() : Skill.UNITS_AND_PREFIXES;
    }
}
