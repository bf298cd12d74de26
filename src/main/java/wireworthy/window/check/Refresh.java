package wireworthy.window.check;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;

/** Passes a refreshing on to what stands in a part of the window. */
final class Refresh {
    private Refresh() {}

    /** Refreshes all of these that can be, and what stands in the others. */
    static void all(final List<? extends Node> nodes) {
        nodes.forEach(Refresh::one);
    }

    private static void one(final Node node) {
        if (node instanceof Refreshing refreshing) {
            refreshing.refresh();
        } else if (node instanceof Parent parent) {
            all(parent.getChildrenUnmodifiable());
        }
    }
}
