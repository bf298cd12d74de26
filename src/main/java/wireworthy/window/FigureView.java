package wireworthy.window;

import javafx.scene.Node;
import javafx.scene.control.Button;
import wireworthy.marking.Mark;

/** One figure: its field, and beside it the mark, the rule or the lines. */
final class FigureView implements ExerciseView {
    private final FigureField field;
    private final FigureBeside beside;

    FigureView(final FigureModel model, final WayOn way) {
        field = new FigureField(model.field(), model::answer);
        beside = new FigureBeside(model, way, new Single(way));
    }

    @Override
    public Node answering() {
        return field;
    }

    @Override
    public Node beside() {
        return beside;
    }

    @Override
    public void focus() {
        field.focus();
    }

    /** The ways on from a figure that is asked alone. */
    private record Single(WayOn way) implements FigureBeside.Ways {
        @Override
        public Node from(final Mark mark, final Button... others) {
            return mark.isSound() ? way.sound() : way.unsound(others);
        }
    }
}
