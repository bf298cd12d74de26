package wireworthy.window;

import java.util.List;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;

/** Walks a scene the way a screen reader does. */
public final class Accessibility {
    private Accessibility() {}

    /** What can be reached with the keyboard but has no name; empty when all is well. */
    public static List<String> unlabelled(final Parent root) {
        final List<Node> all = all(root).toList();
        return all.stream()
                .filter(Node::isFocusTraversable)
                .filter(it -> !hasName(it, all))
                .map(Object::toString)
                .toList();
    }

    private static boolean hasName(final Node node, final List<Node> all) {
        return isSaid(node.getAccessibleText())
                || (node instanceof Labeled labeled && isSaid(labeled.getText()))
                || all.stream().anyMatch(it -> it instanceof Label l && l.getLabelFor() == node);
    }

    private static boolean isSaid(final String text) {
        return text != null && !text.isBlank();
    }

    private static Stream<Node> all(final Node node) {
        return node instanceof Parent parent
                ? Stream.concat(
                        Stream.of(node),
                        parent.getChildrenUnmodifiable().stream().flatMap(Accessibility::all))
                : Stream.of(node);
    }
}
