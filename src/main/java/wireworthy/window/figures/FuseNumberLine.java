package wireworthy.window.figures;

import java.util.List;
import java.util.OptionalDouble;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.layout.StackPane;

/** The number line of the fuse between its floor and its ceiling, without handles. */
public final class FuseNumberLine extends StackPane {
    /**
     * @param floor A
     * @param ceiling A
     * @param ratings of the series, A, rising
     * @param fitting those from floor to ceiling
     * @param yours the fuse that was chosen, A; empty where none was
     * @param floorFrom what the floor is for, under it; as {@code ceilingFrom} under the ceiling
     */
    public FuseNumberLine(
            final double floor,
            final double ceiling,
            final List<Double> ratings,
            final List<Double> fitting,
            final OptionalDouble yours,
            final String floorFrom,
            final String ceilingFrom) {
        final FuseBetween.Shown shown =
                new FuseBetween.Shown(
                        floor, ceiling, ratings, fitting, yours, floorFrom, ceilingFrom);
        final FuseBetweenDrawing drawing =
                new FuseBetweenDrawing(new SimpleObjectProperty<>(shown));
        // Beside a form there is less room than in a lesson.
        drawing.setMinWidth(0);
        drawing.setAccessibleText(shown.verdict());
        getChildren().setAll(drawing);
    }
}
