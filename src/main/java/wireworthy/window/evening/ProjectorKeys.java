package wireworthy.window.evening;

import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javafx.event.EventHandler;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/**
 * The keys at the wall. Space and the arrows turn its lines while nothing is typed or all of it is
 * marked, and the two page keys always, as those are what a hand-held clicker sends.
 */
final class ProjectorKeys implements EventHandler<KeyEvent> {
    private final ProjectorModel model;
    private final TextField field;
    private final BooleanSupplier back;
    private final Runnable leave;

    /**
     * @param back closes what is open beside the question; false where nothing is
     * @param leave leaves the wall
     */
    ProjectorKeys(
            final ProjectorModel model,
            final TextField field,
            final BooleanSupplier back,
            final Runnable leave) {
        this.model = model;
        this.field = field;
        this.back = back;
        this.leave = leave;
    }

    /** A blank that turns a line is not typed as well. */
    void handleTyped(final KeyEvent event) {
        if (" ".equals(event.getCharacter()) && field.equals(event.getTarget()) && nothingTyped()) {
            event.consume();
        }
    }

    @Override
    public void handle(final KeyEvent event) {
        if (event.isShortcutDown() ? withShortcut(event) : plain(event)) {
            event.consume();
        }
    }

    private boolean withShortcut(final KeyEvent event) {
        if (event.getCode() == KeyCode.ENTER) {
            return act(ProjectorTask::tell);
        }
        if (!field.getText().isEmpty()) {
            return false;
        }
        return switch (event.getCode()) {
            case RIGHT -> go(model::next);
            case LEFT -> go(model::previous);
            case Z -> act(ProjectorTask::undo);
            default -> false;
        };
    }

    private boolean plain(final KeyEvent event) {
        return switch (event.getCode()) {
            case PAGE_DOWN -> act(ProjectorTask::reveal);
            case PAGE_UP -> act(ProjectorTask::conceal);
            case RIGHT, SPACE -> free(event) && act(ProjectorTask::reveal);
            case LEFT -> free(event) && act(ProjectorTask::conceal);
            case ESCAPE -> emptied(event) || back.getAsBoolean() || go(leave);
            default -> false;
        };
    }

    /** Whether the key means nothing else where the keyboard is. */
    private boolean free(final KeyEvent event) {
        return event.getTarget() instanceof ScrollPane
                || (field.equals(event.getTarget()) && nothingTyped());
    }

    /** Also where all of it is marked, as what was refused is. */
    private boolean nothingTyped() {
        return field.getText().isBlank() || field.getText().equals(field.getSelectedText());
    }

    private boolean emptied(final KeyEvent event) {
        return field.equals(event.getTarget())
                && !field.getText().isEmpty()
                && act(ProjectorTask::clear);
    }

    private boolean act(final Consumer<ProjectorTask> does) {
        model.task().get().ifPresent(does);
        return true;
    }

    private static boolean go(final Runnable does) {
        does.run();
        return true;
    }
}
