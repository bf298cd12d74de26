package wireworthy.window.parts;

import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;

/** Scrolls no further than is needed to see something. */
public final class Scrolling {
    private Scrolling() {}

    /** Brings a node into view in the page it stands on, if that scrolls. */
    public static void into(final Node node) {
        page(node).ifPresent(pane -> to(pane, node));
    }

    private static Optional<ScrollPane> page(final Node node) {
        for (Parent at = node.getParent(); at != null; at = at.getParent()) {
            if (at instanceof ScrollPane pane) {
                return Optional.of(pane);
            }
        }
        return Optional.empty();
    }

    /** Changes the page a node stands on; the node stays where it is seen. */
    public static void keeping(final Node node, final Runnable change) {
        final Optional<ScrollPane> page = page(node);
        final double before = page.map(pane -> top(pane, node)).orElse(0.0);
        change.run();
        page.ifPresent(pane -> keep(pane, node, before));
    }

    /**
     * Where a part of a page takes another height while something below it has the keyboard, the
     * page moves along: what is typed in stays where it is seen.
     */
    public static void holdBelow(final Region part) {
        part.heightProperty()
                .addListener(
                        (any, before, now) -> {
                            if (before.doubleValue() > 0 && part.getScene() != null) {
                                page(part)
                                        .filter(pane -> hasKeyboardBelow(pane, part))
                                        .ifPresent(pane -> move(pane, now, before));
                            }
                        });
    }

    private static boolean hasKeyboardBelow(final ScrollPane pane, final Node part) {
        final Node owner = pane.getScene().getFocusOwner();
        return owner != null
                && isIn(owner, pane.getContent())
                && !isIn(owner, part)
                && owner.localToScene(0, 0).getY() > part.localToScene(0, 0).getY();
    }

    private static boolean isIn(final Node node, final Node part) {
        return Stream.iterate(node, Objects::nonNull, Node::getParent).anyMatch(part::equals);
    }

    private static void move(final ScrollPane pane, final Number now, final Number before) {
        final double hidden = hidden(pane);
        if (hidden > 0) {
            moveBy(pane, (now.doubleValue() - before.doubleValue()) / hidden);
        }
    }

    private static double hidden(final ScrollPane pane) {
        return pane.getContent().getLayoutBounds().getHeight()
                - pane.getViewportBounds().getHeight();
    }

    private static void moveBy(final ScrollPane pane, final double share) {
        pane.setVvalue(Math.max(0, Math.min(1, pane.getVvalue() + share)));
    }

    /** How far below the upper edge of what is seen of a page. */
    private static double top(final ScrollPane pane, final Node node) {
        return pane.sceneToLocal(node.localToScene(node.getLayoutBounds())).getMinY();
    }

    private static void keep(final ScrollPane pane, final Node node, final double before) {
        pane.applyCss();
        pane.layout();
        final double hidden = hidden(pane);
        if (hidden > 0) {
            moveBy(pane, (top(pane, node) - before) / hidden);
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
