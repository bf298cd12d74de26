package wireworthy.window;

import java.util.List;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.input.KeyCombination;
import wireworthy.record.Settings;
import wireworthy.window.parts.Styles;

/** The sums, text size, light or dark, and the keys: what one sets once and finds again here. */
final class ViewMenu extends MenuButton {
    private final MenuItem larger;
    private final MenuItem smaller;
    private final MenuItem usual;
    private final MenuItem theme;
    private final Menu sizes = new Menu();
    private final MainWindow window;

    ViewMenu(final MainWindow window) {
        super("View");
        this.window = window;
        getStyleClass().add(Styles.VIEW_MENU);
        setMinWidth(USE_PREF_SIZE);
        setAccessibleText("View: your sums, text size, light or dark, keys");
        larger = item("Larger text", Keys.LARGER, window::largerText);
        smaller = item("Smaller text", Keys.SMALLER, window::smallerText);
        usual = item("Usual text size", Keys.USUAL, window::usualText);
        theme = item("Dark", Keys.THEME, window::otherTheme);
        Settings.TEXT_SIZES.forEach(size -> sizes.getItems().add(size(window, size)));
        final MenuItem help = item("Keys", Keys.HELP, window::help);
        getItems()
                .setAll(
                        sums(window),
                        new SeparatorMenuItem(),
                        larger,
                        smaller,
                        usual,
                        sizes,
                        new SeparatorMenuItem(),
                        theme,
                        new SeparatorMenuItem(),
                        help);
    }

    /** Offers pages to which no terminal belongs, under the sums. */
    void offer(final List<? extends Place> pages) {
        for (int i = 0; i < pages.size(); i++) {
            final Place page = pages.get(i);
            final MenuItem item = new MenuItem(page.title());
            item.setOnAction(event -> window.goToPage(page.id()));
            getItems().add(i + 1, item);
        }
    }

    /** Says what the settings are and which of the choices lead further. */
    void say(final Settings settings) {
        final int size = settings.textSize();
        sizes.setText("Text size: " + size + " %");
        usual.setDisable(size == Settings.SMALLEST_TEXT);
        smaller.setDisable(size == Settings.SMALLEST_TEXT);
        larger.setDisable(size == Settings.LARGEST_TEXT);
        theme.setText(settings.dark() ? "Light colours" : "Dark colours");
    }

    private static MenuItem sums(final MainWindow window) {
        final MenuItem item = new MenuItem(SumsTexts.of("title"));
        item.setOnAction(event -> window.changeSums());
        return item;
    }

    private static MenuItem size(final MainWindow window, final int perCent) {
        final MenuItem item = new MenuItem(perCent + " %");
        item.setOnAction(event -> window.text(perCent));
        return item;
    }

    private static MenuItem item(
            final String text, final KeyCombination key, final Runnable action) {
        final MenuItem item = new MenuItem(text);
        item.setAccelerator(key);
        item.setOnAction(event -> action.run());
        return item;
    }
}
