package wireworthy.window.check;

import java.util.List;
import javafx.scene.Node;
import wireworthy.window.parts.WorkingStrip;
import wireworthy.working.Assumed;
import wireworthy.working.Line;

/**
 * A working and what it assumes.
 *
 * @param lines in working order
 */
record Workings(List<Line> lines, List<Assumed> assumed) {
    /** Nothing worked yet. */
    static final Workings NONE = new Workings(List.of(), List.of());

    /** How it is drawn. */
    List<Node> drawn() {
        return List.of(new WorkingStrip(lines, assumed));
    }
}
