package wireworthy.marking;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import wireworthy.rules.Direction;
import wireworthy.rules.Ref;
import wireworthy.rules.SlipCatalogue;
import wireworthy.working.Plan;
import wireworthy.working.SlipAt;
import wireworthy.working.Step;
import wireworthy.working.Worked;

/** The figures that known slips give for one quantity of a worked question. */
public final class SlipFigures {
    private static final Comparator<Change> ORDER =
            Comparator.comparingInt(Change::line)
                    .thenComparingInt(change -> SlipCatalogue.order(change.id()));

    private static final double SAME = 1e-9;

    /** Figures kept on the way are enough where there are so many. */
    static final int FIGURES_KEPT = 3;

    private final Worked worked;
    private final Plan plan;
    private final int asked;
    private final double[] pinned;
    private final List<Change> changes;
    private final BitSet needed;
    private double[] before = {};

    private SlipFigures(final Worked worked, final Ref asked, final double[] pinned) {
        this.worked = worked;
        this.plan = worked.plan();
        this.asked = plan.placeOf(asked).orElseThrow();
        this.pinned = pinned;
        this.changes = changes(asked);
        this.needed = needed();
    }

    /** The figures of single slips on the way to a quantity, the earliest line first. */
    public static List<Outcome> of(final Worked worked, final Ref asked) {
        return carriedOn(worked, asked, nothingPinned(worked.plan())).singles();
    }

    /** The same, worked on from the learner's own earlier values. */
    static SlipFigures carriedOn(final Worked worked, final Ref asked, final double[] pinned) {
        return new SlipFigures(worked, asked, pinned);
    }

    static double[] nothingPinned(final Plan plan) {
        final double[] none = new double[plan.start(new double[0]).length];
        Arrays.fill(none, Double.NaN);
        return none;
    }

    private List<Change> changes(final Ref ref) {
        final Set<Integer> way = new HashSet<>();
        final Set<Integer> read = new HashSet<>();
        read.add(asked);
        followBack(asked, way, read);
        final List<Change> all = new ArrayList<>();
        Misreadings.of(worked).stream()
                .filter(m -> read.contains(m.place()) && Double.isNaN(pinned[m.place()]))
                .forEach(all::add);
        for (final SlipAt slip : plan.slips()) {
            if (way.contains(slip.step())) {
                all.add(new Change.AtLine(slip));
            }
        }
        if (!ref.quantity().chosen()) {
            final int last = plan.steps().size();
            all.add(new Change.OfResult("power-of-ten", last, 10));
            all.add(new Change.OfResult("power-of-ten", last, 0.1));
        }
        all.sort(ORDER);
        return all;
    }

    /** Collects the lines and the givens that lead to a place, stopping at pinned values. */
    private void followBack(final int place, final Set<Integer> way, final Set<Integer> read) {
        final List<Step> steps = plan.steps();
        for (int i = 0; i < steps.size(); i++) {
            if (steps.get(i).output() == place && way.add(i)) {
                for (final int input : steps.get(i).inputs()) {
                    read.add(input);
                    if (Double.isNaN(pinned[input])) {
                        followBack(input, way, read);
                    }
                }
            }
        }
    }

    /** One slip each. */
    List<Outcome> singles() {
        return changes.stream().map(change -> outcome(List.of(change))).toList();
    }

    private Outcome outcome(final List<Change> gone) {
        return new Outcome(gone, value(gone));
    }

    /** What comes out: only the lines from what went wrong on are worked again. */
    private double value(final List<Change> gone) {
        int first = plan.steps().size();
        for (final Change change : gone) {
            first = Math.min(first, change.line());
        }
        return run(gone, needed, Math.max(first, 0))[asked];
    }

    /** All values with these things gone wrong. */
    double[] run(final List<Change> gone) {
        return run(gone, allLines(), 0);
    }

    private BitSet allLines() {
        final BitSet all = new BitSet();
        all.set(0, plan.steps().size());
        return all;
    }

    private double[] run(final List<Change> gone, final BitSet lines, final int from) {
        final double[] values = before().clone();
        final List<SlipAt> slipping = new ArrayList<>(gone.size());
        double factor = 1;
        for (final Change change : gone) {
            if (change instanceof Change.Misread misread) {
                values[misread.place()] = misread.value();
            } else if (change instanceof Change.AtLine line) {
                slipping.add(line.at());
            } else if (change instanceof Change.OfResult result) {
                factor *= result.factor();
            }
        }
        final double[] done = plan.replay(values, lines, from, slipping, pinned);
        done[asked] *= factor;
        return done;
    }

    /** All values with nothing gone wrong, worked on from the learner's own; worked once. */
    private double[] before() {
        if (before.length == 0) {
            final double[] values = worked.values().clone();
            for (int place = 0; place < values.length; place++) {
                values[place] = Double.isNaN(pinned[place]) ? values[place] : pinned[place];
            }
            before = plan.replay(values, allLines(), 0, List.of(), pinned);
        }
        return before;
    }

    /** The lines that the asked one reads, soundly or by a slip, and so on back. */
    private BitSet needed() {
        final Set<Integer> places = new HashSet<>(Set.of(asked));
        final BitSet lines = new BitSet();
        for (int i = plan.steps().size() - 1; i >= 0; i--) {
            final int line = i;
            if (places.contains(plan.steps().get(i).output())) {
                lines.set(i);
                IntStream.of(plan.steps().get(i).inputs()).forEach(places::add);
                changes.stream()
                        .filter(it -> it.line() == line && it instanceof Change.AtLine)
                        .flatMapToInt(it -> IntStream.of(((Change.AtLine) it).at().inputs()))
                        .forEach(places::add);
            }
        }
        return lines;
    }

    /** Every pair of slips at different lines. */
    List<Outcome> pairs() {
        final List<Outcome> pairs = new ArrayList<>();
        for (int i = 0; i < changes.size(); i++) {
            for (int j = i + 1; j < changes.size(); j++) {
                if (changes.get(i).line() < changes.get(j).line()) {
                    pairs.add(outcome(List.of(changes.get(i), changes.get(j))));
                }
            }
        }
        return pairs;
    }

    /** One slip made at every load alike, where there are several. */
    List<Outcome> alike() {
        final Map<String, List<Change>> byId = new LinkedHashMap<>();
        changes.stream()
                .filter(Change.AtLine.class::isInstance)
                .filter(change -> subject(change) != Ref.CIRCUIT)
                .forEach(it -> byId.computeIfAbsent(it.id(), id -> new ArrayList<>()).add(it));
        return byId.values().stream()
                .filter(all -> all.size() > 1)
                .filter(all -> all.stream().map(this::subject).distinct().count() == all.size())
                .map(this::outcome)
                .toList();
    }

    private int subject(final Change change) {
        return plan.at(plan.steps().get(change.line()).output()).subject();
    }

    /** Whether no single one of a pair gives its figure: the other one changed something, too. */
    boolean needsBoth(final Outcome pair) {
        return pair.changes().stream()
                .noneMatch(
                        change ->
                                Math.abs(value(List.of(change)) - pair.value())
                                        <= SAME * Math.abs(pair.value()));
    }

    /** How many different slips lie on the way. */
    long count() {
        return changes.stream().map(Change::id).distinct().count();
    }

    /** The places of the lines that a learner could be asked for, the earliest first. */
    List<Integer> linesBetween() {
        final Set<Integer> way = new HashSet<>();
        followBack(asked, way, new HashSet<>());
        return way.stream()
                .sorted()
                .map(plan.steps()::get)
                .filter(SlipFigures::told)
                .map(Step::output)
                .filter(place -> place != asked && Double.isNaN(pinned[place]))
                .toList();
    }

    /** The givens on the way to a quantity whose unit is easily misread. */
    public static List<Ref> givensInDoubt(final Worked worked, final Ref asked) {
        return carriedOn(worked, asked, nothingPinned(worked.plan())).givensInDoubt().stream()
                .map(worked.plan()::at)
                .toList();
    }

    /** The places of the givens on the way that may have been misread. */
    List<Integer> givensInDoubt() {
        return changes.stream()
                .filter(Change.Misread.class::isInstance)
                .map(change -> ((Change.Misread) change).place())
                .filter(place -> place != asked)
                .distinct()
                .toList();
    }

    /** The value that comes of every line before it being rounded to three figures; SI. */
    public static double inThreeFigures(final Worked worked, final Ref asked) {
        return carriedOn(worked, asked, nothingPinned(worked.plan())).rounded(FIGURES_KEPT);
    }

    /** Whether a line has a sum of its own, rather than only carrying a value over. */
    static boolean told(final Step step) {
        return step.direction().reading() != Direction.Reading.CARRIED;
    }

    /** Whether replaying with intermediate results of so many figures gives a value. */
    boolean roundedTo(final int figures, final double low, final double high) {
        final double rounded = rounded(figures);
        return rounded >= low && rounded <= high;
    }

    private double rounded(final int figures) {
        final double[] values = worked.values().clone();
        for (final Step step : plan.steps()) {
            final double[] x = new double[step.inputs().length];
            for (int i = 0; i < x.length; i++) {
                x[i] = values[step.inputs()[i]];
            }
            final double value = step.direction().arithmetic().of(x, plan.setting());
            final boolean keep = step.output() == asked || Double.isNaN(value) || value == 0;
            // What is looked up, rather than worked out, stands there as it is.
            final boolean whole = keep || step.direction().formula().inWords();
            values[step.output()] = whole ? value : round(value, figures, step);
        }
        return values[asked];
    }

    private double round(final double si, final int figures, final Step step) {
        final double unit = plan.at(step.output()).quantity().dimension().scale();
        final double value = si / unit;
        final double step10 = Math.pow(10, Math.floor(Math.log10(Math.abs(value))) - figures + 1);
        return Math.rint(value / step10) * step10 * unit;
    }
}
