package wireworthy.window.parts;

import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyEvent;

/** Enter presses the main button of a page, also where the toolkit's own controls keep it. */
final class MainButton {
    private static final KeyCodeCombination ENTER = new KeyCodeCombination(KeyCode.ENTER);

    private MainButton() {}

    /** Lets Enter through from the choices in a part of a page. */
    static void pressedFrom(final Node choices) {
        choices.addEventFilter(
                KeyEvent.KEY_PRESSED,
                event -> {
                    final Runnable main = choices.getScene().getAccelerators().get(ENTER);
                    if (ENTER.match(event) && main != null) {
                        event.consume();
                        main.run();
                    }
                });
    }
}
