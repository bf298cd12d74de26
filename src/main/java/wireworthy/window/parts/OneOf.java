package wireworthy.window.parts;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** A named row of a few values of which one always holds; on several rows where room is short. */
public final class OneOf<T> extends VBox {
    private final ToggleGroup group = new ToggleGroup();
    private final FlowPane row = new WrappingRow();
    private final String name;

    /**
     * @param name what is chosen, over the row and for screen readers
     * @param now the value that holds
     * @param chosen told a value when another one is chosen
     */
    public OneOf(
            final String name,
            final List<T> values,
            final Function<T, String> text,
            final T now,
            final Consumer<T> chosen) {
        this.name = name;
        getStyleClass().add(Styles.ONE_OF);
        row.getStyleClass().add(Styles.PICK_ROW);
        row.setAccessibleRole(AccessibleRole.PARENT);
        values.forEach(value -> row.getChildren().add(button(text.apply(value), value, now)));
        group.selectedToggleProperty()
                .addListener(
                        (any, before, on) ->
                                values.stream()
                                        .filter(value -> value.equals(on.getUserData()))
                                        .forEach(chosen));
        MainButton.pressedFrom(row);
        getChildren().setAll(Texts.strong(name), row);
    }

    /** Puts the keyboard on what holds. */
    public void focus() {
        row.getChildren().stream()
                .filter(node -> node instanceof RadioButton button && button.isSelected())
                .forEach(Node::requestFocus);
    }

    /** Chooses a value as a person does. */
    public void choose(final T value) {
        group.getToggles().stream()
                .filter(each -> each.getUserData().equals(value))
                .forEach(group::selectToggle);
    }

    private Node button(final String text, final T value, final T now) {
        final RadioButton button = new RadioButton(text);
        button.setMnemonicParsing(false);
        button.setWrapText(true);
        button.setUserData(value);
        button.setAccessibleText(name + ": " + text);
        button.setToggleGroup(group);
        button.setSelected(value.equals(now));
        return button;
    }
}
