package wireworthy.evening.print;

import java.util.List;
import wireworthy.evening.Asked;
import wireworthy.practice.Problem;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Ref;
import wireworthy.working.Telling;

/**
 * Writes the figures of one part of a problem in one unit, as they are compared with one another: a
 * figure by itself is given in milliohms where it is small.
 *
 * @param all the problem of every learner
 * @param part counted from 0
 */
record OneUnit(List<Problem> all, int part) {
    private static final int FIGURES = 3;
    private static final String SMALL = FigureText.inMilliohms(0, FIGURES).substring(1);

    OneUnit {
        all = List.copyOf(all);
    }

    /** The right figure of a learner, counted from 0. */
    String right(final int learner) {
        final Problem problem = all.get(learner);
        final Ref ref = problem.parts().get(part).ref();
        final String right = Asked.of(problem).get(part).right();
        return ohms() ? text(problem.worked().value(ref).orElse(Double.NaN)) : right;
    }

    /** A figure of any learner, SI. */
    String text(final double si) {
        if (!ohms() || !Double.isFinite(si)) {
            return Telling.result(ref().quantity(), si);
        }
        return milli()
                ? FigureText.inMilliohms(si, FIGURES)
                : FigureText.inFieldUnit(si, Dimension.RESISTANCE, FIGURES);
    }

    private boolean ohms() {
        return ref().quantity().dimension() == Dimension.RESISTANCE;
    }

    /** Where one of the right figures is told so, all are. */
    private boolean milli() {
        return all.stream().anyMatch(it -> Asked.of(it).get(part).right().endsWith(SMALL));
    }

    private Ref ref() {
        return all.get(0).parts().get(part).ref();
    }
}
