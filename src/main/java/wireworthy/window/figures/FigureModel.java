package wireworthy.window.figures;

import java.util.List;
import javafx.beans.value.ObservableValue;

/**
 * A live figure without its drawing: what can be moved, and what the engine says to it.
 *
 * @param <S> what is shown
 */
interface FigureModel<S extends Told> {
    /** What moves along a slider, in the order shown; those that stay are not among them. */
    List<Knob> knobs();

    /** What can be ticked, in the order shown. */
    default List<Tick> ticks() {
        return List.of();
    }

    /** What is picked by name, in the order shown. */
    default List<Pick> picks() {
        return List.of();
    }

    /** What is to be shown now; follows the handles. */
    ObservableValue<S> now();
}
