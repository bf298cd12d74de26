package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.paint.Paint;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wireworthy.record.Settings;
import wireworthy.record.SettingsFile;

class MainWindowTest extends WindowTest {
    private static final Offset<Double> WITHIN = Offset.offset(1e-5);

    private static final double NARROW = 500;

    private final TestPlace hall = new TestPlace("Hall");
    private final TestPlace stalls = new TestPlace("Stalls");
    private final TestPlace ticketDesk = new TestPlace("Ticket desk");

    @Override
    protected List<Place> places() {
        return List.of(hall, stalls, ticketDesk);
    }

    /** All tests are given the same stage. */
    @AfterEach
    void widen() {
        interact(() -> stage.setWidth(MainWindow.WIDTH));
    }

    @AfterEach
    void forget() throws IOException {
        settings.close();
        Files.deleteIfExists(folder.resolve("settings.json"));
    }

    @Test
    void theFirstPlaceIsInUseAtFirst() {
        assertThat(reads("The place Hall")).isTrue();
        assertThat(terminal("hall").isSelected()).isTrue();
    }

    @Test
    void shortcutAndNumberGoToAPlace() {
        push(KeyCode.SHORTCUT, KeyCode.DIGIT3);
        assertThat(reads("The place Ticket desk")).isTrue();
        assertThat(reads("The place Hall")).isFalse();
        assertThat(terminal("ticket-desk").isSelected()).isTrue();
        assertThat(terminal("hall").isSelected()).isFalse();
    }

    @Test
    void aNumberWithoutAPlaceDoesNothing() {
        push(KeyCode.SHORTCUT, KeyCode.DIGIT5);
        assertThat(reads("The place Hall")).isTrue();
    }

    @Test
    void arrowsGoFromTerminalToTerminal() {
        interact(() -> terminal("hall").requestFocus());
        push(KeyCode.RIGHT);
        assertThat(reads("The place Stalls")).isTrue();
    }

    @Test
    void pressingTheTerminalInUseKeepsItScrewedDown() {
        clickOn("#hall");
        assertThat(terminal("hall").isSelected()).isTrue();
        assertThat(hall.shown).hasValue(1);
    }

    @Test
    void aPlaceIsBuiltOnItsFirstVisitOnly() {
        assertThat(stalls.built).hasValue(0);
        push(KeyCode.SHORTCUT, KeyCode.DIGIT2);
        push(KeyCode.SHORTCUT, KeyCode.DIGIT1);
        push(KeyCode.SHORTCUT, KeyCode.DIGIT2);
        assertThat(stalls.built).hasValue(1);
        assertThat(stalls.shown).hasValue(2);
    }

    @Test
    void aPlaceCanSendToAnother() {
        interact(() -> window.go("stalls"));
        assertThat(reads("The place Stalls")).isTrue();
        assertThatThrownBy(() -> window.go("attic")).hasMessageContaining("attic");
    }

    @Test
    void textGrowsShrinksAndComesBack() {
        push(KeyCode.SHORTCUT, KeyCode.PLUS).push(KeyCode.SHORTCUT, KeyCode.PLUS);
        assertThat(textSize()).isCloseTo(17 * 1.25, WITHIN);
        push(KeyCode.SHORTCUT, KeyCode.MINUS);
        assertThat(textSize()).isCloseTo(17 * 1.1, WITHIN);
        push(KeyCode.SHORTCUT, KeyCode.DIGIT0);
        assertThat(textSize()).isEqualTo(17);
    }

    @Test
    void wherePlacesHaveNoRoomInARowTheyAreAListThatTheKeysOpen() {
        interact(
                () -> {
                    stage.setWidth(NARROW);
                    window.text(200);
                    Screens.settle(window.scene());
                });
        final MenuButton places = lookup(".places-menu").queryAs(MenuButton.class);
        assertThat(places.isVisible()).as("%s", window.scene().getWidth()).isTrue();
        assertThat(terminal("hall").isVisible() && terminal("hall").getParent().isVisible())
                .isFalse();
        assertThat(places.getText()).isEqualTo("Hall");

        interact(places::requestFocus);
        push(KeyCode.SPACE);
        assertThat(places.isShowing()).isTrue();
        interact(() -> places.getItems().get(1).fire());
        interact(places::hide);
        assertThat(reads("The place Stalls")).isTrue();
        assertThat(places.getText()).isEqualTo("Stalls");
        push(KeyCode.SHORTCUT, KeyCode.DIGIT3);
        assertThat(places.getText()).isEqualTo("Ticket desk");

        interact(
                () -> {
                    window.text(100);
                    Screens.settle(window.scene());
                });
        assertThat(places.isVisible()).isFalse();
        assertThat(terminal("ticket-desk").isSelected()).isTrue();
    }

    @Test
    void textGrowsToTwiceItsSizeAndNoFurther() {
        for (int i = 0; i < 12; i++) {
            push(KeyCode.SHORTCUT, KeyCode.PLUS);
        }
        assertThat(textSize()).isEqualTo(34);
        assertThat(settings.now().textSize()).isEqualTo(Settings.LARGEST_TEXT);
    }

    @ParameterizedTest
    @ValueSource(ints = {175, 200})
    void aTextSizeIsPickedInTheViewMenu(final int perCent) {
        final MenuButton view = lookup(".view-menu").queryAs(MenuButton.class);
        interact(view::show);
        interact(
                () ->
                        view.getItems().stream()
                                .filter(Menu.class::isInstance)
                                .flatMap(menu -> ((Menu) menu).getItems().stream())
                                .filter(item -> item.getText().equals(perCent + " %"))
                                .forEach(MenuItem::fire));
        assertThat(textSize()).isCloseTo(17 * perCent / 100.0, WITHIN);
        assertThat(settings.now().textSize()).isEqualTo(perCent);
    }

    @Test
    void dAndShortcutChangeBetweenLightAndDark() {
        assertThat(paper()).isEqualTo(Color.web("#FBF8F2"));
        push(KeyCode.SHORTCUT, KeyCode.D);
        assertThat(paper()).isEqualTo(Color.web("#171C21"));
        push(KeyCode.SHORTCUT, KeyCode.D);
        assertThat(paper()).isEqualTo(Color.web("#FBF8F2"));
    }

    @Test
    void theViewMenuDoesTheSameByMouse() {
        clickOn("View").clickOn("Dark colours");
        assertThat(settings.now().dark()).isTrue();
        clickOn("View").clickOn("Larger text");
        assertThat(settings.now().textSize()).isEqualTo(110);
    }

    @Test
    void qAndShortcutCloseTheWindow() {
        push(KeyCode.SHORTCUT, KeyCode.Q);
        assertThat(stage.isShowing()).isFalse();
    }

    @Test
    void helpShowsTheKeysAndEscapeGivesTheKeyboardBack() {
        interact(() -> terminal("stalls").requestFocus());
        push(KeyCode.F1);
        assertThat(reads("Keys")).isTrue();
        push(KeyCode.ESCAPE);
        assertThat(reads("Keys")).isFalse();
        assertThat(terminal("stalls").isFocused()).isTrue();
    }

    @Test
    void underACardNothingCanBeReached() {
        push(KeyCode.F1).push(KeyCode.SHORTCUT, KeyCode.DIGIT2);
        assertThat(stalls.shown).hasValue(0);
        push(KeyCode.ENTER).push(KeyCode.SHORTCUT, KeyCode.DIGIT2);
        assertThat(stalls.shown).hasValue(1);
    }

    @Test
    void settingsAreThereAtTheNextStart() {
        push(KeyCode.SHORTCUT, KeyCode.DIGIT2)
                .push(KeyCode.SHORTCUT, KeyCode.D)
                .push(KeyCode.SHORTCUT, KeyCode.PLUS);
        settings.close();
        final Settings next = new SettingsFile(folder.resolve("settings.json")).read();
        assertThat(next)
                .isEqualTo(Settings.DEFAULTS.withPlace("stalls").withDark(true).withTextSize(110));
        interact(() -> start(stage));
        assertThat(reads("The place Stalls")).isTrue();
        assertThat(paper()).isEqualTo(Color.web("#171C21"));
    }

    @Test
    void anUnexpectedErrorIsSaidPlainlyAndWrittenDown() throws IOException {
        clickOn("Fail in Hall");
        assertThat(reads("Something went wrong in the program")).isTrue();
        clickOn("Copy details");
        interact(
                () ->
                        assertThat(Clipboard.getSystemClipboard().getString())
                                .contains("Code ", "a slip of the program"));
        push(KeyCode.ESCAPE);
        assertThat(reads("Something went wrong in the program")).isFalse();
        assertThat(Files.readString(folder.resolve("wireworthy.log")))
                .contains("Code ", "a slip of the program", "TestPlace.fail");
    }

    @Test
    void everythingReachableHasAName() {
        assertThat(Accessibility.unlabelled(window.scene().getRoot())).isEmpty();
        push(KeyCode.F1);
        assertThat(Accessibility.unlabelled(window.scene().getRoot())).isEmpty();
    }

    private ToggleButton terminal(final String id) {
        return lookup("#" + id).queryAs(ToggleButton.class);
    }

    private double textSize() {
        return lookup("View").queryLabeled().getFont().getSize();
    }

    private Paint paper() {
        final Region root = (Region) window.scene().getRoot();
        return root.getBackground().getFills().get(0).getFill();
    }
}
