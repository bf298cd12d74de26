package wireworthy.window.evening;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Pages;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Verdict;

/** What the pages at a laptop share. */
final class LaptopPages {
    private LaptopPages() {}

    /** A page with its parts one under the other. */
    static ScrollPane page(final String name, final List<Node> parts) {
        final VBox page = new VBox();
        page.getStyleClass().addAll(Styles.PAGE, Styles.EVENING_FORM);
        page.getChildren().setAll(parts);
        return Pages.scroll(name, page);
    }

    /** What is the matter, whenever something is. */
    static Node trouble(final LaptopModel model) {
        final StackPane place = new StackPane();
        model.trouble()
                .subscribe(
                        text -> {
                            place.getChildren().clear();
                            if (!text.isEmpty()) {
                                place.getChildren().add(new Notice(Verdict.CAUTION, text));
                            }
                        });
        place.managedProperty().bind(model.trouble().isNotEmpty());
        return place;
    }
}
