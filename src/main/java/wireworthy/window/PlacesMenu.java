package wireworthy.window;

import java.util.List;
import java.util.function.Consumer;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import wireworthy.window.parts.Styles;

/** The places folded into a list, under the name of the one in use. Made when first opened. */
final class PlacesMenu extends MenuButton {
    PlacesMenu(final List<Place> places, final Consumer<Place> use) {
        getStyleClass().add(Styles.PLACES_MENU);
        setMinWidth(USE_PREF_SIZE);
        setMnemonicParsing(false);
        sayNone();
        setOnShowing(event -> fill(places, use));
    }

    /** Says which place is in use. */
    void say(final String title) {
        setText(title);
        setAccessibleText(WindowTexts.of("places.read", "title", title));
    }

    /** Says that a page is shown which belongs to no place. */
    void sayNone() {
        setText(WindowTexts.of("places"));
        setAccessibleText(WindowTexts.of("places"));
    }

    private void fill(final List<Place> places, final Consumer<Place> use) {
        if (getItems().isEmpty()) {
            places.forEach(place -> getItems().add(item(place, use)));
        }
    }

    private static MenuItem item(final Place place, final Consumer<Place> use) {
        final MenuItem item = new MenuItem(place.title());
        item.setMnemonicParsing(false);
        item.setOnAction(event -> use.accept(place));
        return item;
    }
}
