package wireworthy.window;

import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import javafx.util.Subscription;

/** Watches a page until its end has come into view. */
final class EndShown {
    /** How many pixels of the lower margin may still be out of view. */
    private static final double NEARLY = 24;

    private final ScrollPane scroll;
    private final Region page;
    private final Runnable then;
    private Subscription watching = Subscription.EMPTY;

    EndShown(final ScrollPane scroll, final Region page, final Runnable then) {
        this.scroll = scroll;
        this.page = page;
        this.then = then;
    }

    /** Looks after each scrolling and each change of the room, until the end has been seen. */
    Subscription watch() {
        watching =
                Subscription.combine(
                        scroll.vvalueProperty().subscribe(this::look),
                        scroll.viewportBoundsProperty().subscribe(this::look),
                        page.heightProperty().subscribe(this::look));
        return watching;
    }

    private void look() {
        final double room = scroll.getViewportBounds().getHeight();
        final double below = (page.getHeight() - room) * (1 - scroll.getVvalue());
        if (room > 0 && page.getHeight() > 0 && below <= NEARLY) {
            watching.unsubscribe();
            then.run();
        }
    }
}
