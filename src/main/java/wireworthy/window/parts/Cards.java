package wireworthy.window.parts;

import javafx.scene.Node;
import javafx.scene.layout.VBox;

/** White cards on the paper. */
public final class Cards {
    private Cards() {}

    /** A card with its parts one under the other. */
    public static VBox card(final Node... parts) {
        final VBox card = new VBox(parts);
        card.getStyleClass().add(Styles.CARD);
        return card;
    }
}
