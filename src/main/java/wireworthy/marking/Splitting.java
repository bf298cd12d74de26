package wireworthy.marking;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wireworthy.rules.Ref;
import wireworthy.working.Worked;

/**
 * Chooses the line whose answer tells most about which slips it was; where no line does, a given
 * that may have been misread.
 */
final class Splitting {
    private static final double SAME = 1e-6;

    private final Worked worked;
    private final SlipFigures figures;
    private final List<Integer> lines;
    private final List<Integer> all;

    Splitting(final Worked worked, final SlipFigures figures) {
        this.worked = worked;
        this.figures = figures;
        this.lines = figures.linesBetween();
        this.all = Stream.concat(lines.stream(), figures.givensInDoubt().stream()).toList();
    }

    /** All values once the first slip of a pair is in, and once both are. */
    private record Runs(double[] first, double[] both) {}

    /** The line that shows the first slip of most pairs, then that which leaves the fewest. */
    Optional<Ref> amongPairs(final List<Outcome> pairs) {
        final List<Runs> runs = pairs.stream().map(this::runs).toList();
        return all.stream()
                .filter(place -> shown(runs, place) > 0)
                .min(
                        Comparator.<Integer>comparingLong(place -> -shown(runs, place))
                                .thenComparingLong(place -> left(runs, place)))
                .map(worked.plan()::at);
    }

    /** The figure itself, once more: with its decimal point put right one slip is left in it. */
    static Optional<Ref> pointPutRight(final List<Outcome> pairs, final Ref asked) {
        return pairs.stream().anyMatch(Splitting::pointMoved)
                ? Optional.of(asked)
                : Optional.empty();
    }

    private static boolean pointMoved(final Outcome pair) {
        return pair.changes().stream().anyMatch(Change.OfResult.class::isInstance);
    }

    private Runs runs(final Outcome pair) {
        return new Runs(figures.run(pair.changes().subList(0, 1)), figures.run(pair.changes()));
    }

    /** Whether a line holds the first slip of a pair and not yet the second. */
    private boolean shows(final Runs run, final int place) {
        return !same(run.first()[place], worked.values()[place])
                && same(run.first()[place], run.both()[place]);
    }

    private long shown(final List<Runs> runs, final int place) {
        return runs.stream().filter(run -> shows(run, place)).count();
    }

    /** How many pairs an answer at a line would leave, summed over all the pairs. */
    private long left(final List<Runs> runs, final int place) {
        return runs.stream()
                .map(run -> run.both()[place])
                .mapToLong(own -> runs.stream().filter(r -> same(r.both()[place], own)).count())
                .sum();
    }

    /**
     * The line that tells whether it was this slip: the first that shows it, else the last that
     * leaves only a few slips after it.
     *
     * @param few how many slips may lie on the rest of the way
     */
    Optional<Ref> toBeSureOf(final Outcome single, final Ref asked, final int few) {
        final double[] run = figures.run(single.changes());
        final Optional<Integer> showing =
                all.stream().filter(p -> !same(run[p], worked.values()[p])).findFirst();
        return showing.map(worked.plan()::at).or(() -> leaving(few, asked));
    }

    /** The last line, where no more than a few slips can be made after it. */
    Optional<Ref> leaving(final int few, final Ref asked) {
        return lines.stream()
                .reduce((earlier, later) -> later)
                .filter(place -> after(place, asked) <= few)
                .map(worked.plan()::at);
    }

    private long after(final int place, final Ref asked) {
        final double[] pinned = SlipFigures.nothingPinned(worked.plan());
        pinned[place] = worked.values()[place];
        return SlipFigures.carriedOn(worked, asked, pinned).count();
    }

    private static boolean same(final double one, final double other) {
        return Math.abs(one - other) <= SAME * Math.abs(other);
    }
}
