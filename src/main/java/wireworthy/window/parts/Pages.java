package wireworthy.window.parts;

import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Pages that scroll up and down and never sideways. */
public final class Pages {
    private Pages() {}

    /** A scrolling page with the usual margins, its parts one under the other. */
    public static ScrollPane page(final String name, final Node... parts) {
        final VBox page = new VBox(parts);
        page.getStyleClass().add(Styles.PAGE);
        return scroll(name, page);
    }

    /** Anything made to scroll; its width follows the window. */
    public static ScrollPane scroll(final String name, final Node content) {
        final ScrollPane scroll = new ScrollPane(content);
        dress(scroll);
        scroll.setAccessibleText(name);
        return scroll;
    }

    /** The way on is in sight however far the page reaches. */
    public static VBox withFoot(final ScrollPane page, final Node wayOn) {
        final VBox both = new VBox();
        foot(both, page, wayOn);
        return both;
    }

    /** The same where the box is there already. */
    public static void foot(final VBox both, final ScrollPane page, final Node wayOn) {
        wayOn.getStyleClass().add(Styles.FOOT);
        VBox.setVgrow(page, Priority.ALWAYS);
        both.getChildren().setAll(page, wayOn);
    }

    static void dress(final ScrollPane scroll) {
        scroll.getStyleClass().add(Styles.PAGE_SCROLL);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.skinProperty()
                .addListener(made -> scroll.lookupAll(".viewport").forEach(Pages::live));
    }

    /** The toolkit keeps a picture of all that is seen, and a move would paint all of it anew. */
    private static void live(final Node viewport) {
        viewport.setCache(false);
    }
}
