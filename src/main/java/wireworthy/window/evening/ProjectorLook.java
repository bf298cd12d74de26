package wireworthy.window.evening;

import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import wireworthy.window.Shell;

/** How large a wall is. */
final class ProjectorLook extends MenuButton {
    ProjectorLook(final ProjectorWall wall, final Shell shell) {
        super(ProjectorTexts.of("look"));
        getItems()
                .setAll(
                        item("larger", wall::larger),
                        item("smaller", wall::smaller),
                        item("full-screen", shell::fullScreen));
    }

    /** Takes buttons for which the bar has no room, or gives them back. */
    void fold(final boolean folded, final List<Button> buttons) {
        setText(ProjectorTexts.of(folded ? "more" : "look"));
        getItems().removeIf(item -> item.getUserData() != null);
        if (folded) {
            buttons.forEach(button -> getItems().add(item(button)));
        }
    }

    private static MenuItem item(final Button button) {
        final MenuItem item = new MenuItem();
        item.textProperty().bind(button.textProperty());
        item.disableProperty().bind(button.disabledProperty());
        item.setOnAction(event -> button.fire());
        item.setUserData(button);
        return item;
    }

    private static MenuItem item(final String key, final Runnable action) {
        final MenuItem item = new MenuItem(ProjectorTexts.of(key));
        item.setOnAction(event -> action.run());
        return item;
    }
}
