package wireworthy.window;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;

/** Scrolls a page so that what has just changed on it can be seen. */
final class IntoView {
    private IntoView() {}

    /** Brings the nodes into view once they are laid out; the last where not all have room. */
    static void bring(final Node... nodes) {
        NextFrame.then(
                nodes[0],
                () -> {
                    for (final Node node : nodes) {
                        scroll(node);
                    }
                });
    }

    private static void scroll(final Node node) {
        for (Node it = node.getParent(); it != null; it = it.getParent()) {
            if (it instanceof ScrollPane pane) {
                scroll(pane, node);
                return;
            }
        }
    }

    private static void scroll(final ScrollPane pane, final Node node) {
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
