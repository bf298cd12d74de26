package wireworthy.evening.called;

import java.util.List;
import wireworthy.practice.ChoiceProblem;
import wireworthy.practice.Exercise;
import wireworthy.practice.OrderProblem;
import wireworthy.practice.Problem;
import wireworthy.practice.SlipHunt;

/** What a group is asked at once, and how what it calls out is taken. */
public interface Asking {
    /** The question. */
    String ask();

    /** What there is to choose from or to put in order, lettered from A; empty for figures. */
    List<String> lettered();

    /** The way to the answer, the answer last. */
    List<WallLine> lines();

    /**
     * Takes what was called out.
     *
     * @param typed one answer or several, as people say them
     */
    Taken take(String typed);

    /** The questions of an exercise, in order; one for all but whole circuits. */
    static List<Asking> of(final Exercise exercise) {
        if (exercise instanceof Problem problem) {
            return problem.parts().stream()
                    .<Asking>map(part -> new AskingFigure(problem.worked(), part))
                    .toList();
        }
        if (exercise instanceof ChoiceProblem choice) {
            return List.of(new AskingLetter(choice));
        }
        if (exercise instanceof OrderProblem order) {
            return List.of(new AskingOrder(order));
        }
        throw new IllegalArgumentException("no sheet has a " + SlipHunt.class.getSimpleName());
    }
}
