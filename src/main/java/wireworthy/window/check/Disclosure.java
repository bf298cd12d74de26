package wireworthy.window.check;

import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import wireworthy.window.parts.Icon;
import wireworthy.window.parts.KeptBox;
import wireworthy.window.parts.Styles;

/** A line that opens what only some need; that is made when it is first opened. */
final class Disclosure extends KeptBox {
    private final ToggleButton line;
    private final Supplier<Node> content;

    Disclosure(final String title, final Supplier<Node> content) {
        this.content = content;
        line = new ToggleButton(title, Icon.ON.node());
        line.getStyleClass().setAll(Styles.DISCLOSURE);
        line.setWrapText(true);
        line.setMinHeight(USE_PREF_SIZE);
        line.selectedProperty().subscribe(this::turn);
        getStyleClass().add(Styles.TIGHT);
        getChildren().setAll(line);
    }

    private void turn(final boolean open) {
        line.getGraphic().setRotate(open ? 90 : 0);
        line.setAccessibleHelp(CheckTexts.of(open ? "disclosure.open" : "disclosure.closed"));
        if (!open) {
            getChildren().setAll(line);
        } else if (getChildren().size() == 1) {
            getChildren().add(content.get());
        }
    }

    boolean isOpen() {
        return line.isSelected();
    }

    /** Opens it. */
    void open() {
        line.setSelected(true);
    }
}
