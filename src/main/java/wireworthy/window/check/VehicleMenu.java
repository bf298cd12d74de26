package wireworthy.window.check;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;

/** What is done with the file of a vehicle. */
final class VehicleMenu extends MenuButton {
    private final VehicleModel model;
    private final Dialogs dialogs;
    private final Runnable fromSheet;

    VehicleMenu(final VehicleModel model, final Dialogs dialogs, final Runnable fromSheet) {
        super(CheckTexts.of("menu"));
        this.model = model;
        this.dialogs = dialogs;
        this.fromSheet = fromSheet;
        setId("vehicle-menu");
        setAccessibleText(CheckTexts.of("menu.read"));
        setMaxWidth(Double.MAX_VALUE);
        setOnShowing(event -> fill());
        fill();
    }

    private void fill() {
        getItems()
                .setAll(
                        item("menu.new", model::begin),
                        item("menu.open", this::open),
                        item("menu.example", model::openExample),
                        item("sheet.open", fromSheet));
        // By name: by the last use, what was chosen a moment ago would stand elsewhere each time.
        final List<Path> recent =
                model.shelf().recent().stream()
                        .sorted(Comparator.comparing(VehicleMenu::name))
                        .toList();
        if (!recent.isEmpty()) {
            getItems().add(new SeparatorMenuItem());
            recent.forEach(file -> getItems().add(recent(file)));
        }
    }

    private MenuItem recent(final Path file) {
        final CheckMenuItem item = new CheckMenuItem(String.valueOf(file.getFileName()));
        item.setMnemonicParsing(false);
        item.setSelected(model.keeper().file().map(Shelf::whole).equals(Optional.of(file)));
        item.setOnAction(event -> model.open(file));
        return item;
    }

    private static String name(final Path file) {
        return String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    }

    private static MenuItem item(final String key, final Runnable action) {
        final MenuItem item = new MenuItem(CheckTexts.of(key));
        item.setOnAction(event -> action.run());
        return item;
    }

    private void open() {
        dialogs.open(getScene().getWindow(), CheckTexts.of("kind.vehicle"), Dialogs.VEHICLE)
                .ifPresent(model::open);
    }
}
