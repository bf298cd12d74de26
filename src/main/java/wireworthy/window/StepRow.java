package wireworthy.window;

import java.util.function.Consumer;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Icon;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** A step that can be moved up and down: by its buttons, or with Alt and the arrow keys. */
final class StepRow extends HBox {
    /**
     * What stands in the row.
     *
     * @param number of the row, from 1
     * @param of how many there are
     */
    record Step(int number, int of, String text) {}

    /** Where the keyboard is to be once the row has moved: on the row or the same button of it. */
    private enum Focus {
        ROW,
        UP,
        DOWN
    }

    /** Moves the row. */
    interface Moving {
        /**
         * Moves it.
         *
         * @param by -1 or 1
         * @param then told the row as it is drawn then
         */
        void move(int by, Consumer<StepRow> then);
    }

    private final Button up;
    private final Button down;
    private final Moving moving;

    StepRow(final Step step, final Moving moving) {
        this.moving = moving;
        up = button("order.up", Icon.UP, step, -1, Focus.UP);
        down = button("order.down", Icon.DOWN, step, 1, Focus.DOWN);
        up.setDisable(step.number() == 1);
        down.setDisable(step.number() == step.of());
        final Label text =
                Texts.paragraph(
                        PracticeTexts.of(
                                "order.step", "number", step.number(), "step", step.text()));
        HBox.setHgrow(text, Priority.ALWAYS);
        text.setMaxWidth(Double.MAX_VALUE);
        getStyleClass().add(Styles.STEP_ROW);
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.LIST_ITEM);
        setAccessibleText(text.getText());
        setAccessibleHelp(PracticeTexts.of("order.keys"));
        setOnMouseClicked(event -> requestFocus());
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        getChildren().setAll(text, up, down);
    }

    private Button button(
            final String key, final Icon icon, final Step step, final int by, final Focus focus) {
        final Button button = Buttons.plain("", () -> move(by, focus));
        button.setGraphic(icon.node());
        button.setTooltip(new Tooltip(PracticeTexts.of(key)));
        button.setAccessibleText(PracticeTexts.of(key + ".read", "step", step.text()));
        button.setMinWidth(USE_PREF_SIZE);
        return button;
    }

    private void key(final KeyEvent event) {
        if (event.isAltDown() && event.getCode() == KeyCode.UP) {
            move(-1, Focus.ROW);
            event.consume();
        } else if (event.isAltDown() && event.getCode() == KeyCode.DOWN) {
            move(1, Focus.ROW);
            event.consume();
        }
    }

    private void move(final int by, final Focus focus) {
        moving.move(by, row -> row.focusOn(focus));
    }

    private void focusOn(final Focus focus) {
        final Button button = focus == Focus.UP ? up : down;
        if (focus == Focus.ROW || button.isDisabled()) {
            requestFocus();
        } else {
            button.requestFocus();
        }
    }
}
