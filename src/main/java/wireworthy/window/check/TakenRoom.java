package wireworthy.window.check;

import java.util.function.Predicate;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;

/**
 * The room a part has once taken: kept until one rests or the keyboard goes elsewhere, so that
 * nothing under it jumps, or is painted anew, while a figure is typed.
 */
final class TakenRoom {
    private final Region part;
    private final Predicate<Node> stays;
    private final Runnable given;

    /**
     * @param stays where the keyboard may go without the room being given back
     * @param given what is to be done once it is
     */
    TakenRoom(final Region part, final Predicate<Node> stays, final Runnable given) {
        this.part = part;
        this.stays = stays;
        this.given = given;
        part.sceneProperty().flatMap(Scene::focusOwnerProperty).subscribe(this::focused);
    }

    /** Keeps what it takes now, before it says something else. */
    void keep() {
        part.setMinHeight(Math.max(part.getMinHeight(), part.getHeight()));
    }

    boolean isKept() {
        return part.getMinHeight() > 0;
    }

    private void focused(final @Nullable Node owner) {
        if (owner != null && !stays.test(owner)) {
            giveBack();
        }
    }

    /** The part takes no more room than what is said now. */
    void giveBack() {
        part.setMinHeight(Region.USE_COMPUTED_SIZE);
        given.run();
    }
}
