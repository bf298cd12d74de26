package wireworthy.window.check;

import java.util.List;
import javafx.scene.Node;
import wireworthy.window.parts.Badge;

/** How a spot stands, as a badge. */
final class StateBadge {
    private StateBadge() {}

    static List<Node> of(final State state) {
        return List.of(new Badge(state.verdict(), state.words()));
    }
}
