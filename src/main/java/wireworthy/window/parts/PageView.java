package wireworthy.window.parts;

import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;

/**
 * A view that shows one page after another. A view for each page would cost the memory of a picture
 * each: the toolkit draws a view into a picture of its own, and gives that back only when memory
 * runs out.
 */
public final class PageView extends ScrollPane {
    /** Stays the same: the skin holds on to the first content there is. */
    private final VBox turned = new VBox();

    public PageView() {
        Pages.dress(this);
        setContent(turned);
    }

    /** Shows another page, from its top. */
    public void turnTo(final String name, final Node page) {
        setAccessibleText(name);
        turned.getChildren().setAll(page);
        setVvalue(getVmin());
    }
}
