package wireworthy.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import wireworthy.marking.Change;
import wireworthy.marking.Comparison;
import wireworthy.marking.Outcome;
import wireworthy.marking.SlipFigures;
import wireworthy.rules.Ref;
import wireworthy.rules.Skill;
import wireworthy.working.Telling;
import wireworthy.working.Worked;

/**
 * A working with one slip in it: which line is wrong, and what should stand there?
 *
 * @param problem the one that was worked wrongly
 * @param slip what went wrong
 * @param rows the wrong working, in order
 * @param wrong the number of the row with the slip, from 0
 */
public record SlipHunt(Problem problem, Outcome slip, List<Row> rows, int wrong)
        implements Exercise {
    private static final double SEEN = 0.015;

    public SlipHunt {
        rows = List.copyOf(rows);
    }

    /**
     * One line of the wrong working.
     *
     * @param skill to which it belongs
     * @param ref what it gives
     * @param formula in words
     * @param numbers the sum with its result
     */
    public record Row(Skill skill, Ref ref, String formula, String numbers) {}

    /**
     * A hunt on a problem; empty where its working has one line only or no slip shows in it.
     *
     * @param own slips made lately, which come first
     * @param fit skills in whose lines a slip is better hidden than in others
     */
    static Optional<SlipHunt> of(
            final Problem problem,
            final List<String> own,
            final Predicate<Skill> fit,
            final SplitMix random) {
        final List<SlipHunt> all = preferred(all(problem), hunt -> fit.test(hunt.skill()));
        final List<SlipHunt> among = preferred(all, hunt -> hunt.isOf(own));
        return among.isEmpty()
                ? Optional.empty()
                : Optional.of(among.get(random.below(among.size())));
    }

    private static List<SlipHunt> preferred(
            final List<SlipHunt> all, final Predicate<SlipHunt> such) {
        final List<SlipHunt> some = all.stream().filter(such).toList();
        return some.isEmpty() ? all : some;
    }

    private static List<SlipHunt> all(final Problem problem) {
        final List<SlipHunt> all = new ArrayList<>();
        for (final Outcome outcome : SlipFigures.of(problem.worked(), problem.asked())) {
            hunt(problem, outcome).ifPresent(all::add);
        }
        return all;
    }

    private static Optional<SlipHunt> hunt(final Problem problem, final Outcome outcome) {
        if (!(outcome.changes().get(0) instanceof Change.AtLine)
                || !shows(problem, outcome.value())) {
            return Optional.empty();
        }
        final Comparison both = Comparison.of(problem.worked(), problem.asked(), outcome);
        if (both.rows().size() < 2 || both.partsAt().isEmpty()) {
            return Optional.empty();
        }
        final List<Row> rows = both.rows().stream().map(row -> row(problem, row)).toList();
        return Optional.of(new SlipHunt(problem, outcome, rows, both.partsAt().getAsInt()));
    }

    private static boolean shows(final Problem problem, final double value) {
        final double right = problem.worked().value(problem.asked()).orElse(Double.NaN);
        return Math.abs(value - right) > SEEN * Math.abs(right);
    }

    private static Row row(final Problem problem, final Comparison.Row row) {
        return new Row(
                skill(problem, row.sound().ref()),
                row.sound().ref(),
                row.sound().formula(),
                row.wrong().orElse(row.sound().numbers()));
    }

    private static Skill skill(final Problem problem, final Ref ref) {
        return Telling.way(problem.worked(), problem.asked()).stream()
                .filter(step -> step.direction().output().equals(ref))
                .map(step -> step.direction().skill())
                .findFirst()
                .orElse(problem.skill());
    }

    /** Whether its slip is one of these. */
    public boolean isOf(final List<String> slips) {
        return slips.contains(slip.ids().get(0));
    }

    /** That of the line with the slip: to find it is what an answer shows. */
    @Override
    public Skill skill() {
        return rows.get(wrong).skill();
    }

    @Override
    public Template template() {
        return problem.template();
    }

    @Override
    public long seed() {
        return problem.seed();
    }

    @Override
    public String text() {
        return problem.text();
    }

    @Override
    public String ask() {
        return problem.ask();
    }

    @Override
    public Optional<Worked> circuit() {
        return problem.circuit();
    }

    @Override
    public int draws() {
        return problem.draws();
    }
}
