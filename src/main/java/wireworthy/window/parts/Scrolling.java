package wireworthy.window.parts;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ScrollPane;

/** Scrolls no further than is needed to see something. */
public final class Scrolling {
    private Scrolling() {}

    /** Brings a node into view in the page it stands on, if that scrolls. */
    public static void into(final Node node) {
        for (Parent at = node.getParent(); at != null; at = at.getParent()) {
            if (at instanceof ScrollPane pane) {
                to(pane, node);
                return;
            }
        }
    }

    /** Brings a node of the page into view; its top where it is higher than the view. */
    public static void to(final ScrollPane pane, final Node node) {
        final Bounds page = pane.getContent().getLayoutBounds();
        final Bounds at = pane.getContent().sceneToLocal(node.localToScene(node.getLayoutBounds()));
        final double room = pane.getViewportBounds().getHeight();
        final double hidden = page.getHeight() - room;
        if (hidden <= 0) {
            return;
        }
        final double top = pane.getVvalue() * hidden;
        final double lowest = Math.min(at.getMinY(), at.getMaxY() - room);
        final double wanted = Math.max(lowest, Math.min(top, at.getMinY()));
        pane.setVvalue(Math.max(0, Math.min(1, wanted / hidden)));
    }
}
