package wireworthy.window;

import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import wireworthy.rules.FigureText;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** A field for a figure, and under it how the figure is understood. */
public final class FigureField extends VBox {
    private final TextField field = new TextField();

    /**
     * @param entered what Enter does
     */
    public FigureField(final TypedFigure figure, final Runnable entered) {
        final String asked = figure.quantity().words();
        final String unit = FigureText.unit(figure.quantity().dimension());
        final String shown = unit.isEmpty() ? PracticeTexts.of("no-unit") : unit;
        final Label understood = Texts.soft("");
        getStyleClass().add(Styles.TIGHT);
        field.getStyleClass().add(Styles.ANSWER);
        field.setPromptText(asked + ", " + shown);
        field.setAccessibleText(PracticeTexts.of("your-answer", "quantity", asked, "unit", shown));
        field.textProperty().bindBidirectional(figure.text());
        field.setOnAction(event -> entered.run());
        understood.textProperty().bind(figure.understood());
        getChildren().setAll(field, understood);
    }

    /** Puts the keyboard into the field, behind what stands there. */
    public void focus() {
        field.requestFocus();
        field.end();
    }
}
