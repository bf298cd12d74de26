package wireworthy.window.check;

import java.util.Optional;
import javafx.animation.PauseTransition;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.util.Duration;
import wireworthy.window.parts.Scrolling;

/**
 * Gives the room kept while one typed back a moment after the last results came. What is being
 * typed in stays where it is seen.
 */
final class Resting {
    private static final Duration MOMENT = Duration.seconds(1);

    private final Parent place;
    private final PauseTransition moment = new PauseTransition(MOMENT);

    Resting(final Parent place) {
        this.place = place;
        moment.setOnFinished(over -> giveBack());
    }

    /** Results have come: the moment begins anew. */
    void begin() {
        moment.playFromStart();
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
