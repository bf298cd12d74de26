package wireworthy.window;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.control.MenuButton;
import wireworthy.record.Settings;
import wireworthy.window.parts.Styles;

/** What one sets once and finds again here. Its choices are made only when it is first opened. */
final class ViewMenu extends MenuButton {
    private Optional<ViewChoices> choices = Optional.empty();

    ViewMenu(final MainWindow window, final Supplier<Settings> settings) {
        super(WindowTexts.of("view"));
        getStyleClass().add(Styles.VIEW_MENU);
        setMinWidth(USE_PREF_SIZE);
        setAccessibleText(WindowTexts.of("view.read"));
        setOnShowing(event -> fill(window, settings.get()));
    }

    /** Says what the settings are and which of the choices lead further. */
    void say(final Settings settings) {
        choices.ifPresent(it -> it.say(settings));
    }

    private void fill(final MainWindow window, final Settings settings) {
        if (choices.isEmpty()) {
            final ViewChoices made = new ViewChoices(window);
            made.say(settings);
            getItems().setAll(made.all());
            choices = Optional.of(made);
        }
    }
}
