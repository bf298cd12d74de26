package wireworthy.window.figures;

import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import wireworthy.window.parts.Styles;

/** An area of danger: tinted, and hatched so that colour does not say it alone. */
final class HatchedZone extends StackPane {
    HatchedZone() {
        getStyleClass().add(Styles.ZONE_DANGER);
        final Region hatching = new Region();
        hatching.getStyleClass().add(Styles.HATCHING);
        getChildren().add(hatching);
    }
}
