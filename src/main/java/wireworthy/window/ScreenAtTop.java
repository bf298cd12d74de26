package wireworthy.window;

import java.util.List;
import java.util.function.IntConsumer;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.util.Subscription;

/** Knows which screen of a lesson stands at the top of the window, and brings one there. */
final class ScreenAtTop {
    /** A screen whose beginning is a little below the top counts as being there, in pixels. */
    private static final double NEARLY = 80;

    private final ScrollPane scroll;
    private final LessonPage page;
    private final IntConsumer told;

    /**
     * @param told the number, from 0, of the screen at the top whenever it is another one
     */
    ScreenAtTop(final ScrollPane scroll, final LessonPage page, final IntConsumer told) {
        this.scroll = scroll;
        this.page = page;
        this.told = told;
    }

    /** Brings a screen to the top and watches from there. */
    Subscription from(final int number) {
        final List<Node> screens = page.screens();
        if (number > 0 && number < screens.size() && hidden() > 0) {
            final double top = screens.get(number).getBoundsInParent().getMinY();
            scroll.setVvalue(Math.min(1, top / hidden()));
        }
        return scroll.vvalueProperty().subscribe((before, now) -> tell());
    }

    private double hidden() {
        return page.getHeight() - scroll.getViewportBounds().getHeight();
    }

    private void tell() {
        final double top = scroll.getVvalue() * hidden() + NEARLY;
        final long above =
                page.screens().stream()
                        .filter(screen -> screen.getBoundsInParent().getMinY() <= top)
                        .count();
        told.accept((int) Math.max(0, above - 1));
    }
}
