package wireworthy.window.parts;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.AccessibleRole;
import javafx.scene.control.CheckBox;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** A named row of values of which any may hold; on several rows where room is short. */
public final class SomeOf<T> extends VBox {
    private final List<T> values;
    private final List<CheckBox> boxes = new ArrayList<>();
    private final String name;
    private final Consumer<Set<T>> chosen;

    /**
     * @param name what is chosen, over the row and for screen readers
     * @param now the values that hold
     * @param chosen told all values that hold, whenever one is added or left out
     */
    public SomeOf(
            final String name,
            final List<T> values,
            final Function<T, String> text,
            final Set<T> now,
            final Consumer<Set<T>> chosen) {
        this.values = List.copyOf(values);
        this.name = name;
        this.chosen = chosen;
        final FlowPane row = new WrappingRow();
        row.getStyleClass().add(Styles.PICK_ROW);
        row.setAccessibleRole(AccessibleRole.PARENT);
        getStyleClass().add(Styles.ONE_OF);
        values.forEach(value -> boxes.add(box(now.contains(value))));
        say(text);
        row.getChildren().setAll(boxes);
        MainButton.pressedFrom(row);
        getChildren().setAll(Texts.strong(name), row);
    }

    private CheckBox box(final boolean holds) {
        final CheckBox box = new CheckBox();
        box.setMnemonicParsing(false);
        box.setWrapText(true);
        box.setSelected(holds);
        box.selectedProperty().addListener((any, before, now) -> chosen.accept(holding()));
        return box;
    }

    private Set<T> holding() {
        final Set<T> holding = new LinkedHashSet<>();
        for (int i = 0; i < boxes.size(); i++) {
            if (boxes.get(i).isSelected()) {
                holding.add(values.get(i));
            }
        }
        return holding;
    }

    /** Says the values anew. */
    public void say(final Function<T, String> text) {
        for (int i = 0; i < boxes.size(); i++) {
            final String now = text.apply(values.get(i));
            boxes.get(i).setText(now);
            boxes.get(i).setAccessibleText(name + ": " + now);
        }
    }
}
