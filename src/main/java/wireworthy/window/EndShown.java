package wireworthy.window;

import javafx.beans.InvalidationListener;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;

/** Watches a page until its end has come into view. */
final class EndShown {
    /** How many pixels of the lower margin may still be out of view. */
    private static final double NEARLY = 24;

    private final ScrollPane scroll;
    private final Region page;
    private final Runnable then;
    private final InvalidationListener listener = change -> look();

    EndShown(final ScrollPane scroll, final Region page, final Runnable then) {
        this.scroll = scroll;
        this.page = page;
        this.then = then;
    }

    /** Looks after each scrolling and each change of the room. */
    void watch() {
        scroll.vvalueProperty().addListener(listener);
        scroll.viewportBoundsProperty().addListener(listener);
        page.heightProperty().addListener(listener);
    }

    private void look() {
        final double room = scroll.getViewportBounds().getHeight();
        final double below = (page.getHeight() - room) * (1 - scroll.getVvalue());
        if (room > 0 && page.getHeight() > 0 && below <= NEARLY) {
            scroll.vvalueProperty().removeListener(listener);
            scroll.viewportBoundsProperty().removeListener(listener);
            page.heightProperty().removeListener(listener);
            then.run();
        }
    }
}
