package wireworthy.window.check;

import java.util.List;

/** How a spot stands, as a badge. */
final class StateBadge {
    private StateBadge() {}

    static List<Line> of(final State state) {
        return List.of(Line.badge(state.verdict(), state.icon(), state.words()));
    }
}
