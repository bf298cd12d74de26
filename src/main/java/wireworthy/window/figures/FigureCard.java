package wireworthy.window.figures;

import javafx.beans.value.ObservableValue;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.VBox;
import wireworthy.window.parts.Cards;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** A live figure on its white card: the drawing, its handles, the same in words, what to try. */
final class FigureCard extends VBox {
    private final ObservableValue<String> words;

    <S extends Told> FigureCard(
            final FigureModel<S> model, final Drawing drawing, final String tryThis) {
        getStyleClass().add(Styles.LIVE_FIGURE);
        words = model.now().map(now -> Texts.kept(now.words()));
        drawing.accessibleTextProperty().bind(words);
        final Label said = Texts.paragraph("");
        said.textProperty().bind(words);
        // A square of the card's own colour: a move paints anew from here, not the page under it.
        final VBox ground = new VBox(drawing);
        ground.getStyleClass().add(Styles.FIGURE_GROUND);
        model.picks().forEach(pick -> ground.getChildren().add(new PickHandle(pick)));
        if (!model.knobs().isEmpty() || !model.ticks().isEmpty()) {
            ground.getChildren().add(new Handles(model.knobs(), model.ticks()));
        }
        ground.getChildren().addAll(toggle(said), said);
        getChildren().addAll(Cards.card(ground), Texts.soft(Texts.kept(tryThis)));
    }

    /** What the figure says now. */
    String words() {
        return words.getValue();
    }

    private static ToggleButton toggle(final Label said) {
        final ToggleButton toggle = new ToggleButton(FigureTexts.of("in-words"));
        toggle.getStyleClass().setAll(Styles.IN_WORDS);
        said.visibleProperty().bind(toggle.selectedProperty());
        said.managedProperty().bind(toggle.selectedProperty());
        return toggle;
    }
}
