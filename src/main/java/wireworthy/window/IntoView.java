package wireworthy.window;

import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import wireworthy.window.parts.Scrolling;

/** Scrolls a page so that what has just changed on it can be seen. */
public final class IntoView {
    private IntoView() {}

    /** Brings the nodes into view once they are laid out; the last where not all have room. */
    public static void bring(final Node... nodes) {
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
                pane.applyCss();
                pane.layout();
                Scrolling.to(pane, node);
                return;
            }
        }
    }
}
