package wireworthy.window.parts;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;

/** The two kinds of button, named by what they do. */
public final class Buttons {
    private Buttons() {}

    /** What most people do next: filled with ink; Enter presses it. */
    public static Button main(final String does, final Runnable action) {
        final Button button = button(does, Styles.MAIN, action);
        button.setDefaultButton(true);
        return button;
    }

    /** What one may also do: outlined. */
    public static Button plain(final String does, final Runnable action) {
        return button(does, Styles.PLAIN, action);
    }

    /** Buttons side by side, on several rows where the room or the text size needs it. */
    public static FlowPane row(final Node... buttons) {
        final FlowPane row = new WrappingRow(buttons);
        row.getStyleClass().add(Styles.BUTTON_ROW);
        return row;
    }

    private static Button button(final String does, final String kind, final Runnable action) {
        final Button button = new Button(does);
        button.getStyleClass().add(kind);
        button.setOnAction(event -> action.run());
        button.setWrapText(true);
        return button;
    }
}
