package wireworthy.window.evening;

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

    private static MenuItem item(final String key, final Runnable action) {
        final MenuItem item = new MenuItem(ProjectorTexts.of(key));
        item.setOnAction(event -> action.run());
        return item;
    }
}
