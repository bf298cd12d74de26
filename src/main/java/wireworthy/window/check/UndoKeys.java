package wireworthy.window.check;

import javafx.event.EventHandler;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import org.jspecify.annotations.Nullable;

/**
 * The keys that undo and redo. They work wherever in the window the keyboard is while the place is
 * shown; only a field outside of it undoes what was typed into itself.
 */
public final class UndoKeys {
    public static final KeyCombination UNDO =
            new KeyCodeCombination(KeyCode.Z, KeyCombination.SHORTCUT_DOWN);

    public static final KeyCombination REDO =
            new KeyCodeCombination(KeyCode.Y, KeyCombination.SHORTCUT_DOWN);

    /** Some are used to this one. */
    private static final KeyCombination REDO_TOO =
            new KeyCodeCombination(
                    KeyCode.Z, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN);

    private final Node place;
    private final Runnable undo;
    private final Runnable redo;
    private final EventHandler<KeyEvent> pressed = this::pressed;

    private UndoKeys(final Node place, final Runnable undo, final Runnable redo) {
        this.place = place;
        this.undo = undo;
        this.redo = redo;
    }

    static void work(final Node place, final Runnable undo, final Runnable redo) {
        final UndoKeys keys = new UndoKeys(place, undo, redo);
        place.sceneProperty().addListener((any, before, now) -> keys.move(before, now));
    }

    private void move(final @Nullable Scene before, final @Nullable Scene now) {
        if (before != null) {
            before.removeEventFilter(KeyEvent.KEY_PRESSED, pressed);
        }
        if (now != null) {
            now.addEventFilter(KeyEvent.KEY_PRESSED, pressed);
        }
    }

    private void pressed(final KeyEvent event) {
        if (place.isDisabled() || isTypedElsewhere(event)) {
            return;
        }
        if (UNDO.match(event)) {
            undo.run();
            event.consume();
        } else if (REDO.match(event) || REDO_TOO.match(event)) {
            redo.run();
            event.consume();
        }
    }

    private boolean isTypedElsewhere(final KeyEvent event) {
        if (!(event.getTarget() instanceof TextInputControl field)) {
            return false;
        }
        for (Node at = field; at != null; at = at.getParent()) {
            if (at.equals(place)) {
                return false;
            }
        }
        return true;
    }
}
