package wireworthy.window.evening;

import java.util.function.IntConsumer;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** A whole number from 1 on; under it what is the matter with what was typed. */
final class CountField extends VBox {
    private static final int DIGITS = 4;

    private final int most;
    private final Label under = Texts.soft("");

    /**
     * @param name over the field and for screen readers
     * @param told a number within bounds, whenever one was typed
     */
    CountField(final String name, final int now, final int most, final IntConsumer told) {
        this.most = most;
        final TextField field = new TextField(String.valueOf(now));
        field.setPrefColumnCount(DIGITS);
        field.setMaxWidth(USE_PREF_SIZE);
        field.setAccessibleText(name);
        field.textProperty().addListener((any, before, typed) -> typed(typed.strip(), told));
        under.managedProperty().bind(under.textProperty().isNotEmpty());
        getStyleClass().add(Styles.ONE_OF);
        getChildren().setAll(Texts.strong(name), field, under);
    }

    private void typed(final String typed, final IntConsumer told) {
        final boolean number = typed.matches("[0-9]{1,4}");
        final int count = number ? Integer.parseInt(typed) : 0;
        final boolean fits = count >= 1 && count <= most;
        under.setText(fits ? "" : EveningTexts.of("count", "most", most));
        if (fits) {
            told.accept(count);
        }
    }
}
