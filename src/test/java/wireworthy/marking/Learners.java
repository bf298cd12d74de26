package wireworthy.marking;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import wireworthy.practice.Draw;
import wireworthy.practice.Problem;
import wireworthy.practice.Template;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.working.Solver;
import wireworthy.working.Step;
import wireworthy.working.Worked;

/** A problem of a bank and what people with known habits type at it. */
record Learners(Worked worked, Ref asked, SlipFigures figures) {
    private static final Draw DRAW = new Draw(new Solver());
    private static final double SOUND = 0.01;

    static Learners at(final Template template, final long seed) {
        final Problem problem = DRAW.problem(template, seed);
        final Worked worked = problem.worked();
        final double[] nothing = SlipFigures.nothingPinned(worked.plan());
        return new Learners(
                worked, problem.asked(), SlipFigures.carriedOn(worked, problem.asked(), nothing));
    }

    double right() {
        return worked.value(asked).orElseThrow();
    }

    String typed(final Ref ref, final double si, final int digits) {
        return SlipProblem.typed(si, ref.quantity(), ref.quantity().chosen() ? 6 : digits);
    }

    String typed(final double si, final int digits) {
        return typed(asked, si, digits);
    }

    Mark mark(final double si, final int digits, final Evidence evidence) {
        return Marker.mark(worked, asked, typed(si, digits), evidence);
    }

    /** The answer once the line asked for has been answered by the same learner. */
    Map<Ref, Mark> settled(final Mark first, final Outcome slips, final int digits) {
        final Ref line = first.ask().orElseThrow();
        final Map<Ref, String> typed = new LinkedHashMap<>();
        typed.put(asked, first.given());
        typed.put(line, typed(line, own(line, slips), digits));
        final Map<Ref, Mark> marks = new LinkedHashMap<>();
        Marker.marks(worked, typed).forEach(mark -> marks.put(mark.ref(), mark));
        return marks;
    }

    /** What the same slips give at a line; asked once more, the decimal point is put right. */
    private double own(final Ref line, final Outcome slips) {
        final List<Change> changes =
                slips.changes().stream()
                        .filter(c -> !line.equals(asked) || !(c instanceof Change.OfResult))
                        .toList();
        return figures.run(changes)[worked.plan().placeOf(line).orElseThrow()];
    }

    /** A figure of no slip: log-uniform from a tenth to ten times the right one. */
    double fromNowhere(final Random random) {
        return right() * Math.pow(10, 2 * random.nextDouble() - 1);
    }

    /** The answer with every sum on the way kept in three figures. */
    double inThreeFigures() {
        final double[] values = worked.values().clone();
        for (final Step step : worked.plan().steps()) {
            final double[] x = new double[step.inputs().length];
            for (int i = 0; i < x.length; i++) {
                x[i] = values[step.inputs()[i]];
            }
            final double value = step.direction().arithmetic().of(x, worked.plan().setting());
            final boolean lookedUp = step.direction().formula().inWords();
            values[step.output()] =
                    lookedUp ? value : rounded(value, step.direction().output().quantity());
        }
        return values[worked.plan().placeOf(asked).orElseThrow()];
    }

    private static double rounded(final double si, final Quantity quantity) {
        if (Double.isNaN(si)) {
            return si;
        }
        final double unit = quantity.dimension().scale();
        return new BigDecimal(si / unit).round(new MathContext(3)).doubleValue() * unit;
    }

    /** Slips that change the answer to another one, each of them for itself. */
    boolean distinct(final Outcome outcome) {
        final double value = outcome.value();
        return value > 0
                && Double.isFinite(value)
                && apart(value, right())
                && (outcome.changes().size() == 1
                        || figures.singles().stream().allMatch(s -> apart(value, s.value())))
                && (outcome.changes().size() == 1 || bothShow(outcome));
    }

    /** Whether neither slip of a pair drowns in what the other does to the answer. */
    private boolean bothShow(final Outcome pair) {
        final int place = worked.plan().placeOf(asked).orElseThrow();
        return pair.changes().stream()
                .map(change -> figures.run(List.of(change))[place])
                .allMatch(alone -> !(Math.abs(pair.value() - alone) <= SOUND * Math.abs(alone)));
    }

    /** Whether a line in between, or a given that may be misread, shows the first slip. */
    boolean shownOnTheWay(final Outcome pair) {
        final double[] first = figures.run(pair.changes().subList(0, 1));
        return Stream.concat(figures.linesBetween().stream(), figures.givensInDoubt().stream())
                .anyMatch(place -> apart(first[place], worked.values()[place]));
    }

    private static boolean apart(final double one, final double other) {
        return Double.isNaN(other) || Math.abs(one - other) > 1e-9 * Math.abs(other);
    }

    /** Whether slips stand first, or beside the first with the same value. */
    static boolean first(final Mark mark, final List<String> ids) {
        return mark.explained().stream()
                .filter(o -> !apart(o.value(), mark.explained().get(0).value()))
                .anyMatch(o -> o.ids().equals(ids));
    }
}
