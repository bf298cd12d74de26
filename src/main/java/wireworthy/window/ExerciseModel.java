package wireworthy.window;

import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import wireworthy.practice.ChoiceProblem;
import wireworthy.practice.Exercise;
import wireworthy.practice.OrderProblem;
import wireworthy.practice.Problem;
import wireworthy.practice.SlipHunt;

/** An exercise as it is being done: what was answered, and what there is to say of it. */
public sealed interface ExerciseModel
        permits FigureModel, PartsModel, ChoiceModel, OrderModel, HuntModel {
    /** What is to be done. */
    Exercise exercise();

    /** Marks what was answered. Only the first mark counts as unaided. */
    void answer();

    /** Whether a line or a part was answered, but not yet all that is asked. */
    default boolean underWay() {
        return false;
    }

    /**
     * Takes over how far the same exercise had come in a window in another language; nothing is
     * kept anew.
     */
    void takeOver(ExerciseModel earlier);

    /** The figure that is worked now; empty where there is no working to open. */
    default Optional<FigureModel> figure() {
        return Optional.empty();
    }

    /**
     * The model that fits the kind of the exercise.
     *
     * @param notKept is told why an answer could not be kept, or nothing where it was
     */
    static ExerciseModel of(
            final Exercise exercise, final AnswerDesk desk, final Consumer<String> notKept) {
        final Keeping keeping = new Keeping(exercise, desk, notKept);
        if (exercise instanceof ChoiceProblem choice) {
            return new ChoiceModel(choice, keeping);
        }
        if (exercise instanceof OrderProblem order) {
            return new OrderModel(order, keeping);
        }
        if (exercise instanceof SlipHunt hunt) {
            return new HuntModel(hunt, keeping);
        }
        final Problem problem = (Problem) exercise;
        return problem.parts().size() == 1
                ? new FigureModel(problem, desk, Map.of(), notKept)
                : new PartsModel(problem, desk, notKept);
    }
}
