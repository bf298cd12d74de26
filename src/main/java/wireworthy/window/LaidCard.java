package wireworthy.window;

import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import wireworthy.window.parts.Pages;
import wireworthy.window.parts.Styles;

/**
 * A card to lay over the window: what it says scrolls where the window is low, its buttons stay in
 * view.
 */
class LaidCard extends VBox {
    /**
     * @param buttons under what is said
     */
    LaidCard(final Node buttons, final Node... said) {
        final VBox words = new VBox(said);
        words.getStyleClass().add(Styles.TIGHT);
        final ScrollPane scroll = Pages.scroll(WindowTexts.of("card"), words);
        setVgrow(scroll, Priority.ALWAYS);
        getStyleClass().addAll(Styles.CARD, Styles.LAID_CARD);
        setMaxHeight(USE_PREF_SIZE);
        getChildren().setAll(scroll, buttons);
    }
}
