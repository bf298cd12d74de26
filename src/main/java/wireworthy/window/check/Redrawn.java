package wireworthy.window.check;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.scene.Node;
import wireworthy.window.parts.KeptBox;
import wireworthy.window.parts.Styles;

/**
 * Draws a thing, and draws it anew only when it has changed.
 *
 * @param <T> what is drawn; told apart by {@code equals}
 */
final class Redrawn<T> extends KeptBox {
    private final Function<T, List<Node>> drawing;
    private Optional<T> drawn = Optional.empty();

    Redrawn(final Function<T, List<Node>> drawing) {
        this.drawing = drawing;
        getStyleClass().add(Styles.TIGHT);
        managedProperty().bind(visibleProperty());
        setVisible(false);
    }

    void show(final T now) {
        if (!drawn.equals(Optional.of(now))) {
            drawn = Optional.of(now);
            getChildren().setAll(drawing.apply(now));
            setVisible(!getChildren().isEmpty());
        }
    }
}
