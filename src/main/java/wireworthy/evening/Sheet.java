package wireworthy.evening;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import wireworthy.practice.Exercise;
import wireworthy.practice.SoldBy;
import wireworthy.practice.Template;
import wireworthy.record.WireSizes;
import wireworthy.rules.Skill;

/**
 * A sheet of problems for a class. Learners and problems are numbered from 1; the same mark gives
 * the same problems everywhere.
 */
public final class Sheet {
    private final String mark;
    private final SheetPlan plan;
    private final List<Template> templates;
    private final Shelf shelf;

    private Sheet(final String mark, final SheetPlan plan, final Shelf shelf) {
        this.mark = mark;
        this.plan = plan;
        this.shelf = shelf;
        this.templates = templates(plan, shelf.banks(plan.ownBanks()));
    }

    /**
     * The sheet of a plan.
     *
     * @throws EveningProblem where it can't be made
     */
    public static Sheet of(final SheetPlan plan, final Shelf shelf) {
        return new Sheet(new SheetMark(shelf).text(plan), plan, shelf);
    }

    /**
     * The sheet of a mark.
     *
     * @throws EveningProblem where it is none, or made from other banks
     */
    public static Sheet marked(final String mark, final Shelf shelf) {
        return of(new SheetMark(shelf).plan(mark), shelf);
    }

    private static List<Template> templates(final SheetPlan plan, final BankSet banks) {
        if (plan.pick() instanceof Pick.BySkills by) {
            return Selection.of(by, banks.templates(), plan.lots());
        }
        final List<String> ids = ((Pick.ByTemplates) plan.pick()).ids();
        return ids.stream().map(id -> banks.template(id).orElseThrow()).toList();
    }

    /** Its mark, in groups of four signs. */
    public String mark() {
        return mark;
    }

    /** What it is made from. */
    public SheetPlan plan() {
        return plan;
    }

    /** A template for each of its problems, in order. */
    public List<Template> templates() {
        return templates;
    }

    /** How many problems it has. */
    public int problems() {
        return templates.size();
    }

    /** How many learners it was made for. */
    public int learners() {
        return plan.learners();
    }

    /** A learner's problem; learners beyond those it was made for have theirs, too. */
    public Exercise exercise(final int learner, final int problem) {
        return shelf.draw().exercise(templates.get(problem - 1), plan.numbers(learner, problem));
    }

    /** Whether a problem stands on another sheet with the same numbers, in the same place. */
    public boolean shares(final Sheet other) {
        return plan.seed() == other.plan.seed()
                && IntStream.range(0, Math.min(problems(), other.problems()))
                        .anyMatch(
                                i ->
                                        templates
                                                .get(i)
                                                .fullId()
                                                .equals(other.templates.get(i).fullId()));
    }

    /**
     * The sheet of another plan, from the same banks.
     *
     * @throws EveningProblem where it can't be made
     */
    public Sheet other(final SheetPlan other) {
        return of(other, shelf);
    }

    /** What was shown to those who do it. */
    public Shown shown() {
        return new Shown(this, shelf);
    }

    /** As many problems of these skills, as hard as those of this sheet, cable sold as in it. */
    public Pick.BySkills likewise(final Set<Skill> skills) {
        if (plan.pick() instanceof Pick.BySkills by) {
            return new Pick.BySkills(
                    skills, by.problems(), by.difficulties(), by.sizes(), by.voltages());
        }
        final Set<Difficulty> difficulties =
                templates.stream()
                        .map(each -> Difficulty.of(each.difficulty()))
                        .collect(Collectors.toSet());
        final Optional<WireSizes> sizes =
                templates.stream().anyMatch(SoldBy::gauge)
                        ? Optional.empty()
                        : Optional.of(WireSizes.MM2);
        return new Pick.BySkills(
                skills, problems(), difficulties, sizes, EnumSet.allOf(SystemVoltage.class));
    }

    /** All problems of a learner, in order. */
    public List<Exercise> exercises(final int learner) {
        return IntStream.rangeClosed(1, problems()).mapToObj(i -> exercise(learner, i)).toList();
    }
}
