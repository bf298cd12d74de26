package wireworthy.window.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;

/** A few things one under the other, of which one is picked; the arrow keys go through them. */
public final class PickList extends VBox {
    private final List<RadioButton> buttons = new ArrayList<>();
    private final Runnable entered;

    /**
     * @param name of the whole, for screen readers
     * @param picked told the number, from 0, of what is picked
     * @param entered what Enter does once it has picked what has the keyboard
     */
    public PickList(
            final String name,
            final List<String> texts,
            final IntConsumer picked,
            final Runnable entered) {
        this.entered = entered;
        getStyleClass().add(Styles.PICK_LIST);
        setAccessibleText(name);
        final ToggleGroup group = new ToggleGroup();
        for (int i = 0; i < texts.size(); i++) {
            buttons.add(button(texts.get(i), i, group, picked));
        }
        getChildren().setAll(buttons);
        addEventFilter(KeyEvent.KEY_PRESSED, event -> key(event, group));
    }

    /**
     * Enter picks what has the keyboard. The arrows pick the next one, and while nothing is picked
     * an end; at the ends they stay.
     */
    private void key(final KeyEvent event, final ToggleGroup group) {
        if (!(event.getTarget() instanceof RadioButton on) || event.isAltDown()) {
            return;
        }
        final KeyCode code = event.getCode();
        if (code == KeyCode.ENTER) {
            on.setSelected(true);
            entered.run();
            event.consume();
        } else if (code == KeyCode.DOWN || code == KeyCode.UP) {
            final RadioButton next = next(group, code == KeyCode.DOWN ? 1 : -1);
            next.setSelected(true);
            next.requestFocus();
            event.consume();
        }
    }

    private RadioButton next(final ToggleGroup group, final int by) {
        final int last = buttons.size() - 1;
        final int from =
                group.getSelectedToggle() instanceof RadioButton on ? buttons.indexOf(on) : -1;
        final int to = from < 0 && by < 0 ? last : from + by;
        return buttons.get(Math.max(0, Math.min(last, to)));
    }

    private static RadioButton button(
            final String text, final int number, final ToggleGroup group, final IntConsumer told) {
        final RadioButton button = new Wrapped(Texts.kept(text));
        button.setToggleGroup(group);
        button.selectedProperty()
                .subscribe(
                        selected -> {
                            if (selected) {
                                told.accept(number);
                            }
                        });
        return button;
    }

    /** Picks the button of a number, from 0, as a press on it does. */
    public void pick(final int number) {
        buttons.get(number).setSelected(true);
    }

    /** The button of a number, from 0. */
    public RadioButton button(final int number) {
        return buttons.get(number);
    }

    /** The number, from 0, of what a key was pressed at; -1 where that is none of them. */
    public int number(final Object pressedAt) {
        return buttons.indexOf(pressedAt);
    }

    /** Puts the keyboard on what is picked, or on the first. */
    public void focus() {
        buttons.stream()
                .filter(RadioButton::isSelected)
                .findFirst()
                .orElse(buttons.get(0))
                .requestFocus();
    }

    /** All of its text is seen, on as many lines as it needs. */
    private static final class Wrapped extends RadioButton {
        /** The toolkit measures the text in a little more room than it then gives it, in pixels. */
        private static final double ROUNDED_AWAY = 2;

        Wrapped(final String text) {
            super(text);
            setMnemonicParsing(false);
            setWrapText(true);
            setMinHeight(USE_PREF_SIZE);
            setMaxWidth(Double.MAX_VALUE);
        }

        @Override
        protected double computePrefHeight(final double width) {
            return super.computePrefHeight(width < 0 ? width : width - ROUNDED_AWAY);
        }
    }
}
