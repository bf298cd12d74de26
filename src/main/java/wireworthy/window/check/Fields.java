package wireworthy.window.check;

import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Parent;

/** Finds the field of an entry. */
final class Fields {
    private Fields() {}

    /** The control with this id that stands in a part of the window and can be seen. */
    static Optional<Node> find(final Parent part, final String id) {
        return all(part).filter(it -> id.equals(it.getId())).findFirst();
    }

    private static Stream<Node> all(final Parent part) {
        return part.getChildrenUnmodifiable().stream()
                .filter(Node::isVisible)
                .flatMap(
                        it ->
                                it instanceof Parent inner
                                        ? Stream.concat(Stream.of(it), all(inner))
                                        : Stream.of(it));
    }
}
