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
    private static final double READY = 0.7;
    private static final double HARD = 0.65;
    private static final int OPEN = 4;

    private final List<Template> templates;
    private final Standing standing;
    private final Moment now;
    private final SplitMix random;
    private final Set<Skill> offered;

    Offer(
            final List<Template> templates,
            final Standing standing,
            final Moment now,
            final SplitMix random) {
        this.templates = templates;
        this.standing = standing;
        this.now = now;
        this.random = random;
        this.offered =
                templates.stream()
                        .map(Template::skill)
                        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Skill.class)));
    }

    private Skills skills() {
        return standing.skills();
    }

    Stream<Skill> skillsWhere(final Predicate<Skill> wanted) {
        return offered.stream().filter(wanted);
    }

    /** The template of this id. */
    Optional<Template> template(final String fullId) {
        return templates.stream().filter(t -> t.fullId().equals(fullId)).findFirst();
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

    /** Never one skill twice running. */
    boolean mixes(final Skill skill) {
        return standing.last().filter(a -> a.skill() == skill).isEmpty();
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
     * The one whose chance is nearest to {@value #WANTED}; of equals one seldom asked lately, then
     * the skill that comes first while it is new, then lots.
     */
    Optional<Template> best(final Predicate<Template> wanted) {
        return first(
                wanted,
                Comparator.comparingDouble(this::offWanted)
                        .thenComparingLong(standing::asked)
                        .thenComparing(this::skillWhileNew));
    }

    /** The one most likely to go right. */
    Optional<Template> likeliest(final Predicate<Template> wanted) {
        return first(wanted, Comparator.comparingDouble(template -> -chance(template)));
    }

    private Optional<Template> first(
            final Predicate<Template> wanted, final Comparator<Template> order) {
        final List<Template> equals = new ArrayList<>();
        for (final Template each : templates) {
            final int compared =
                    !wanted.test(each)
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
