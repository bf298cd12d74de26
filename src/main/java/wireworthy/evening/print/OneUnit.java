package wireworthy.evening.print;

import java.util.ArrayList;
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
 */
final class OneUnit {
    private static final int FIGURES = 3;
    private static final String SMALL = FigureText.inMilliohms(0, FIGURES).substring(1);

    private final Ref ref;
    private final boolean ohms;
    private final boolean small;
    private final List<String> right = new ArrayList<>();

    /**
     * @param all the problem of every learner
     * @param part counted from 0
     */
    OneUnit(final List<Problem> all, final int part) {
        ref = all.get(0).parts().get(part).ref();
        ohms = ref.quantity().dimension() == Dimension.RESISTANCE;
        final List<String> told =
                all.stream().map(problem -> Asked.of(problem).get(part).right()).toList();
        small = ohms && told.stream().anyMatch(figure -> figure.endsWith(SMALL));
        for (int i = 0; i < all.size(); i++) {
            right.add(ohms ? text(right(all.get(i), part)) : told.get(i));
        }
    }

    private static double right(final Problem problem, final int part) {
        return problem.worked().value(problem.parts().get(part).ref()).orElse(Double.NaN);
    }

    /** The right figure of a learner, counted from 0. */
    String right(final int learner) {
        return right.get(learner);
    }

    /** A figure of any learner, SI. */
    String text(final double si) {
        if (!ohms || !Double.isFinite(si)) {
            return Telling.result(ref.quantity(), si);
        }
        return small
                ? FigureText.inMilliohms(si, FIGURES)
                : FigureText.inFieldUnit(si, Dimension.RESISTANCE, FIGURES);
    }
}
