package wireworthy.marking;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import wireworthy.working.Plan;
import wireworthy.working.SlipAt;
import wireworthy.working.Worked;

/** A worked question run again with things gone wrong; not safe from several threads. */
final class Replay {
    private final Worked worked;
    private final Plan plan;
    private final int asked;
    private final double[] pinned;
    private final BitSet needed;
    private double[] before = {};

    /**
     * @param asked the place that is asked for
     * @param pinned values taken over from the learner by place, NaN elsewhere
     * @param changes all that may go wrong
     */
    Replay(
            final Worked worked,
            final int asked,
            final double[] pinned,
            final List<Change> changes) {
        this.worked = worked;
        this.plan = worked.plan();
        this.asked = asked;
        this.pinned = pinned;
        this.needed = needed(changes);
    }

    /** What comes out: only the lines from what went wrong on are worked again. */
    double value(final List<Change> gone) {
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
    private BitSet needed(final List<Change> changes) {
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
}
