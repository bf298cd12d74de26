package wireworthy.marking;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
    private final Replay replay;

    private SlipFigures(final Worked worked, final Ref asked, final double[] pinned) {
        this.worked = worked;
        this.plan = worked.plan();
        this.asked = plan.placeOf(asked).orElseThrow();
        this.pinned = pinned;
        this.changes = changes(asked);
        this.replay = new Replay(worked, this.asked, pinned, changes);
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
        return new Outcome(gone, replay.value(gone));
    }

    /** All values with these things gone wrong. */
    double[] run(final List<Change> gone) {
        return replay.run(gone);
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
                                Math.abs(replay.value(List.of(change)) - pair.value())
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
