package wireworthy.window;

import javafx.scene.Node;

/** The controls of one exercise. */
public interface ExerciseView {
    /** Where it is answered, under the question. */
    Node answering();

    /** What there is to say of it, beside the question. */
    Node beside();

    /** Puts the keyboard where the answer goes. */
    void focus();

    /** The view that fits the kind of the exercise. */
    static ExerciseView of(final ExerciseModel model, final WayOn way) {
        if (model instanceof FigureModel figure) {
            return new FigureView(figure, way);
        }
        if (model instanceof PartsModel parts) {
            return new PartsView(parts, way);
        }
        if (model instanceof ChoiceModel choice) {
            return new ChoiceView(choice, way);
        }
        return model instanceof OrderModel order
                ? new OrderView(order, way)
                : new HuntView((HuntModel) model, way);
    }
}
