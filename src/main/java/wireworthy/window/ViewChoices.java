package wireworthy.window;

import java.util.List;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.input.KeyCombination;
import wireworthy.record.Settings;
import wireworthy.texts.Language;
import wireworthy.window.stand.StandTexts;

/**
 * What the view menu offers: the sums, where one stands, the people, text size, light or dark, the
 * language, and the keys.
 */
final class ViewChoices {
    private final MenuItem larger;
    private final MenuItem smaller;
    private final MenuItem usual;
    private final MenuItem theme;
    private final Menu sizes = new Menu();

    private final List<MenuItem> all;

    ViewChoices(final MainWindow window) {
        larger = item(WindowTexts.of("larger"), Keys.LARGER, window::largerText);
        smaller = item(WindowTexts.of("smaller"), Keys.SMALLER, window::smallerText);
        usual = item(WindowTexts.of("usual"), Keys.USUAL, window::usualText);
        theme = item(WindowTexts.of("dark"), Keys.THEME, window::otherTheme);
        Settings.TEXT_SIZES.forEach(size -> sizes.getItems().add(size(window, size)));
        final MenuItem help = item(WindowTexts.of("keys"), Keys.HELP, window::help);
        all =
                List.of(
                        sums(window),
                        page(window, StandTexts.of("title"), Keys.STAND, StandPlace.ID),
                        page(window, PeopleTexts.of("title"), Keys.PEOPLE, PeoplePlace.ID),
                        new SeparatorMenuItem(),
                        larger,
                        smaller,
                        usual,
                        sizes,
                        new SeparatorMenuItem(),
                        theme,
                        new SeparatorMenuItem(),
                        languages(window),
                        help);
    }

    /** All of them, in order. */
    List<MenuItem> all() {
        return all;
    }

    /** Says what the settings are and which of the choices lead further. */
    void say(final Settings settings) {
        final int size = settings.textSize();
        sizes.setText(WindowTexts.of("size", "size", size));
        usual.setDisable(size == Settings.SMALLEST_TEXT);
        smaller.setDisable(size == Settings.SMALLEST_TEXT);
        larger.setDisable(size == Settings.LARGEST_TEXT);
        theme.setText(WindowTexts.of(settings.dark() ? "light" : "dark"));
    }

    private static MenuItem sums(final MainWindow window) {
        final MenuItem item = new MenuItem(SumsTexts.of("title"));
        item.setOnAction(event -> window.changeSums());
        return item;
    }

    private static Menu languages(final MainWindow window) {
        final Menu menu = new Menu(SumsTexts.of("language"));
        for (final Language language : Language.all()) {
            final RadioMenuItem item = new RadioMenuItem(language.name());
            item.setSelected(language.equals(Language.inUse()));
            item.setOnAction(event -> window.speak(language));
            menu.getItems().add(item);
        }
        return menu;
    }

    private static MenuItem page(
            final MainWindow window,
            final String title,
            final KeyCombination key,
            final String id) {
        return item(title, key, () -> window.goToPage(id));
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
