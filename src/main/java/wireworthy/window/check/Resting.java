package wireworthy.window.check;

import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import wireworthy.window.Pause;
import wireworthy.window.parts.Scrolling;

/**
 * Gives the room kept while one typed back a moment after the last results came. What is being
 * typed in stays where it is seen.
 */
final class Resting {
    private static final long MOMENT_MILLIS = 1000;

    private final Parent place;
    private final Pause moment = new Pause(MOMENT_MILLIS, this::giveBack);

    Resting(final Parent place) {
        this.place = place;
    }

    /** Results have come: the moment begins anew. */
    void begin() {
        moment.begin();
    }

    /** Gives the room back now. */
    void giveBack() {
        Optional.ofNullable(place.getScene())
                .map(Scene::getFocusOwner)
                .ifPresentOrElse(
                        field -> Scrolling.keeping(field, () -> giveBack(place)),
                        () -> giveBack(place));
    }

    private static void giveBack(final Node part) {
        if (part instanceof KeepsRoom kept) {
            kept.giveBack();
        }
        if (part instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(Resting::giveBack);
        }
    }
}
