package wireworthy.window;

import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;

/** Leaves the window time to draw what it has before more is done. */
public final class NextFrame {
    private NextFrame() {}

    /**
     * Runs the action once the next frame has been laid out; at once where nothing is on screen.
     */
    public static void then(final Node node, final Runnable action) {
        final Scene scene = node.getScene();
        final boolean shown =
                scene != null && scene.getWindow() != null && scene.getWindow().isShowing();
        if (shown) {
            scene.addPostLayoutPulseListener(new Once(scene, action));
            Platform.requestNextPulse();
        } else {
            action.run();
        }
    }

    private static final class Once implements Runnable {
        private final Scene scene;
        private final Runnable action;

        Once(final Scene scene, final Runnable action) {
            this.scene = scene;
            this.action = action;
        }

        @Override
        public void run() {
            scene.removePostLayoutPulseListener(this);
            Platform.runLater(action);
        }
    }
}
