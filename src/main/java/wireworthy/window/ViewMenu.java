package wireworthy.window;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import wireworthy.record.Settings;
import wireworthy.window.parts.Styles;

/** What one sets once and finds again here. Its choices are made only when it is first opened. */
final class ViewMenu extends MenuButton {
    private final MainWindow window;
    private List<? extends Place> pages = List.of();
    private Optional<ViewChoices> choices = Optional.empty();

    ViewMenu(final MainWindow window, final Supplier<Settings> settings) {
        super("View");
        this.window = window;
        getStyleClass().add(Styles.VIEW_MENU);
        setMinWidth(USE_PREF_SIZE);
        setAccessibleText("View: your sums, text size, light or dark, keys");
        setOnShowing(event -> fill(settings.get()));
    }

    /** Offers pages to which no terminal belongs, under the sums. */
    void offer(final List<? extends Place> all) {
        pages = List.copyOf(all);
    }

    /** Says what the settings are and which of the choices lead further. */
    void say(final Settings settings) {
        choices.ifPresent(it -> it.say(settings));
    }

    private void fill(final Settings settings) {
        if (choices.isEmpty()) {
            final ViewChoices made = new ViewChoices(window);
            made.say(settings);
            getItems().setAll(made.all());
            getItems().addAll(1, pages.stream().map(this::item).toList());
            choices = Optional.of(made);
        }
    }

    private MenuItem item(final Place page) {
        final MenuItem item = new MenuItem(page.title());
        item.setOnAction(event -> window.goToPage(page.id()));
        return item;
    }
}
