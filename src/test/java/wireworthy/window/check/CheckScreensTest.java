package wireworthy.window.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javafx.scene.Group;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wireworthy.record.SettingsFile;
import wireworthy.record.SettingsKeeper;
import wireworthy.record.SumsInUse;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.LoadEntry;
import wireworthy.window.Accessibility;
import wireworthy.window.Background;
import wireworthy.window.FxTest;
import wireworthy.window.MainWindow;
import wireworthy.window.Screens;
import wireworthy.window.parts.Styles;

/** Check my sums as pictures, with the Heron; nothing cut off, nothing without a name. */
@FxTest
class CheckScreensTest {
    // Settings are written a little later, on a thread of their own.
    @TempDir(cleanup = CleanupMode.NEVER)
    private Path folder;

    /** What is looked at. */
    enum Screen {
        BEGIN,
        WHOLE,
        SUPPLY,
        SUPPLY_ALL_DAY,
        ALL_DAY,
        MAIN,
        SOUND,
        OWN_FIGURE,
        TAP,
        NEW_CIRCUIT,
        PLACES,
        SHEET;

        void way(final VehicleModel model) {
            switch (this) {
                case BEGIN -> model.begin();
                case SUPPLY -> model.choose(Spot.Fixed.SUPPLY);
                case SUPPLY_ALL_DAY -> allDay(model, Spot.Fixed.SUPPLY);
                case ALL_DAY -> allDay(model, new Spot.OfCircuit(0));
                case MAIN -> model.choose(Spot.Fixed.MAIN);
                case SOUND -> model.choose(new Spot.OfCircuit(6));
                case OWN_FIGURE -> model.choose(new Spot.OfCircuit(1));
                case TAP -> model.choose(new Spot.OfCircuit(4));
                case NEW_CIRCUIT -> model.addCircuit();
                case PLACES -> SeveralPlaces.at(model, 1);
                case WHOLE, SHEET -> {}
            }
        }

        private static void allDay(final VehicleModel model, final Spot spot) {
            EntryList.ofLoad(model, 0, 0, LoadEntry.HOURS_A_DAY).type("");
            EntryList.circuit(model, 0).own(Quantity.DAILY_ENERGY).type("140 Wh");
            EntryList.supply(model).own(Quantity.CAPACITY_NEEDED).type("200 Ah");
            model.choose(spot);
        }

        String file() {
            return "check-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    @ParameterizedTest
    @EnumSource
    void itIsRendered(final Screen screen) {
        Screens.render(screen.file(), () -> window(screen));
    }

    @Test
    void theEndsAreRendered() {
        Screens.render("check-end", () -> scrolled(window(Screen.OWN_FIGURE), 1));
        Screens.render("check-whole-middle", () -> scrolled(window(Screen.WHOLE), 0.6));
        Screens.render("check-opened-end", () -> scrolled(opened(window(Screen.OWN_FIGURE)), 1));
    }

    @Test
    void allThatOpensIsRendered() {
        Screens.render("check-opened", () -> opened(window(Screen.TAP)));
    }

    @ParameterizedTest
    @EnumSource
    void nothingIsCutOffOrWithoutAName(final Screen screen) {
        for (final Screens.Setting setting : Screens.Setting.values()) {
            final Scene scene = Screens.scene(opened(window(screen)), setting);
            assertThat(Screens.cutOff(scene.getRoot())).as("%s", setting).isEmpty();
            assertThat(Accessibility.unlabelled(scene.getRoot())).isEmpty();
        }
    }

    private Parent window(final Screen screen) {
        final CheckPlace place = new CheckPlace(folder.resolve("vehicles"), () -> SumsInUse.USUAL);
        final SettingsKeeper settings =
                new SettingsKeeper(new SettingsFile(folder.resolve("settings.json")));
        final Scene scene =
                new MainWindow(List.of(place), settings, Background.atOnce()).open().scene();
        final VehicleModel model = place.desk().model();
        model.openExample();
        screen.way(model);
        if (screen == Screen.SHEET) {
            place.desk().readSheet(sheet());
        }
        final Parent root = scene.getRoot();
        scene.setRoot(new Group());
        return root;
    }

    private Path sheet() {
        final Path file = folder.resolve("circuits.csv");
        try {
            return Files.writeString(
                    file,
                    """
                    Circuit;Watts;Run (m);Cable;Fuse;Amps I get;Remarks
                    Bunk lamps;12 W;4,5;1,5 mm2;5 A;1,0;both ends
                    Radio;18;3;1 mm2;3;1,5;
                    Winch;lots;2;25 mm2;100 A;;ask Robin
                    Total;;;;;2,5;
                    """);
        } catch (final IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Parent scrolled(final Parent root, final double to) {
        panes(root).forEach(pane -> pane.setVvalue(to));
        return root;
    }

    private static Stream<ScrollPane> panes(final Parent root) {
        return all(root).filter(ScrollPane.class::isInstance).map(ScrollPane.class::cast);
    }

    private static Parent opened(final Parent root) {
        all(root)
                .filter(node -> node.getStyleClass().contains(Styles.DISCLOSURE))
                .toList()
                .forEach(line -> ((ToggleButton) line).setSelected(true));
        return root;
    }

    /** All that stands in a part, the content of scrolling panes too. */
    private static Stream<Parent> all(final Parent part) {
        final Stream<Parent> inside =
                part instanceof ScrollPane pane
                        ? Stream.of((Parent) pane.getContent())
                        : part.getChildrenUnmodifiable().stream()
                                .filter(Parent.class::isInstance)
                                .map(Parent.class::cast);
        return Stream.concat(Stream.of(part), inside.flatMap(CheckScreensTest::all));
    }
}
