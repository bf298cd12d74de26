package wireworthy.window;

import javafx.scene.control.Button;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.StackPane;
import wireworthy.window.parts.Buttons;

/** A button for help that not every exercise has; it says why where there is none. */
final class HelpButton extends StackPane {
    private final Button button;
    private final Tooltip reason = new Tooltip(PracticeTexts.of("no-working"));

    HelpButton(final String does, final Runnable action) {
        button = Buttons.plain(does, action);
        getChildren().setAll(button);
    }

    /** Whether there is such help now. A disabled button shows no tooltip, so this one does. */
    void offer(final boolean offered) {
        button.setDisable(!offered);
        button.setAccessibleHelp(offered ? "" : reason.getText());
        if (offered) {
            Tooltip.uninstall(this, reason);
        } else {
            Tooltip.install(this, reason);
        }
    }
}
