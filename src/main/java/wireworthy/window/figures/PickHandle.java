package wireworthy.window.figures;

import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import wireworthy.window.parts.Styles;

/** The names of a pick in a row, one of them on. */
final class PickHandle extends FlowPane {
    PickHandle(final Pick pick) {
        getStyleClass().add(Styles.PICK);
        final Label name = new Label(pick.label());
        name.getStyleClass().add(Styles.SOFT);
        getChildren().add(name);
        final ToggleGroup group = new ToggleGroup();
        for (int i = 0; i < pick.names().size(); i++) {
            getChildren().add(button(pick, i, group));
        }
    }

    private static RadioButton button(final Pick pick, final int place, final ToggleGroup group) {
        final RadioButton button = new RadioButton(pick.names().get(place));
        button.setToggleGroup(group);
        button.setAccessibleText(pick.label() + " " + pick.names().get(place));
        button.setSelected(pick.chosen().get() == place);
        button.selectedProperty()
                .addListener(
                        (of, was, on) -> {
                            if (on) {
                                pick.chosen().set(place);
                            }
                        });
        return button;
    }
}
