package wireworthy.window;

import java.util.List;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;

/** The keys that work all over the window. */
final class Keys {
    static final KeyCombination LARGER = shortcut(KeyCode.PLUS);
    static final KeyCombination SMALLER = shortcut(KeyCode.MINUS);
    static final KeyCombination USUAL = shortcut(KeyCode.DIGIT0);
    static final KeyCombination OTHER = shortcut(KeyCode.N);
    static final KeyCombination THEME = shortcut(KeyCode.D);
    static final KeyCombination QUIT = shortcut(KeyCode.Q);
    static final KeyCombination FIND = new KeyCodeCombination(KeyCode.F);
    static final KeyCombination HELP = new KeyCodeCombination(KeyCode.F1);
    static final KeyCombination STAND = new KeyCodeCombination(KeyCode.F2);
    static final KeyCombination FULL_SCREEN = new KeyCodeCombination(KeyCode.F11);
    static final KeyCombination PEOPLE = new KeyCodeCombination(KeyCode.F3);

    private static final List<KeyCode> DIGITS =
            List.of(KeyCode.DIGIT1, KeyCode.DIGIT2, KeyCode.DIGIT3, KeyCode.DIGIT4, KeyCode.DIGIT5);
    private static final List<KeyCode> NUMPAD =
            List.of(
                    KeyCode.NUMPAD1,
                    KeyCode.NUMPAD2,
                    KeyCode.NUMPAD3,
                    KeyCode.NUMPAD4,
                    KeyCode.NUMPAD5);

    private Keys() {}

    /** Makes the keys work in the scene. */
    static void install(final Scene scene, final MainWindow window) {
        // Plus needs Shift on some keyboards and is a key of its own on others.
        put(scene, window::largerText, KeyCode.PLUS, KeyCode.EQUALS, KeyCode.ADD);
        put(scene, window::smallerText, KeyCode.MINUS, KeyCode.SUBTRACT);
        put(scene, window::usualText, KeyCode.DIGIT0, KeyCode.NUMPAD0);
        put(scene, window::otherTheme, KeyCode.D);
        put(scene, window::quit, KeyCode.Q);
        put(scene, window::find, KeyCode.F);
        scene.addEventHandler(KeyEvent.KEY_PRESSED, event -> find(event, window));
        scene.getAccelerators().put(HELP, window::help);
        scene.getAccelerators().put(FULL_SCREEN, window::fullScreen);
        scene.addEventFilter(KeyEvent.KEY_PRESSED, event -> giveBack(event, window));
        scene.getAccelerators().put(STAND, () -> window.goToPage(StandPlace.ID));
        scene.getAccelerators().put(PEOPLE, () -> window.goToPage(PeoplePlace.ID));
        for (int i = 0; i < DIGITS.size(); i++) {
            final int number = i + 1;
            put(scene, () -> window.goToNumber(number), DIGITS.get(i), NUMPAD.get(i));
        }
    }

    /** The key that goes to the place with this number. */
    static KeyCombination place(final int number) {
        return shortcut(DIGITS.get(number - 1));
    }

    /** F alone goes there too, unless a text is being typed. */
    private static void find(final KeyEvent event, final MainWindow window) {
        final boolean typing =
                window.scene().getFocusOwner() instanceof TextInputControl
                        || event.getTarget() instanceof TextInputControl;
        if (FIND.match(event) && !typing) {
            // What is typed with this key is not for the field.
            Platform.runLater(window::find);
            event.consume();
        }
    }

    /** Esc takes the window back from the whole screen before it does anything else. */
    private static void giveBack(final KeyEvent event, final MainWindow window) {
        if (event.getCode() == KeyCode.ESCAPE && window.leaveFullScreen()) {
            event.consume();
        }
    }

    private static void put(final Scene scene, final Runnable action, final KeyCode... codes) {
        for (final KeyCode code : codes) {
            scene.getAccelerators().put(shortcut(code), action);
        }
    }

    private static KeyCombination shortcut(final KeyCode code) {
        return code == KeyCode.EQUALS || code == KeyCode.PLUS
                ? new KeyCodeCombination(
                        code, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_ANY)
                : new KeyCodeCombination(code, KeyCombination.SHORTCUT_DOWN);
    }
}
