package wireworthy.window;

import java.util.function.Supplier;
import javafx.stage.Stage;
import javafx.stage.Window;
import javafx.util.Subscription;
import wireworthy.record.WindowBounds;

/**
 * Holds a window at its size for a moment. With some window managers of Linux the toolkit makes a
 * window as small as it may be just after it opened, and takes it back from the whole screen while
 * a dialog of the system lies over it (JDK-8316423, JDK-8332222).
 */
public final class HeldSize {
    /** Nothing may have changed for so long before it is put back. */
    private static final long REST_MILLIS = 100;

    private static final long MOMENT_MILLIS = 2000;

    private final Stage stage;
    private final WindowBounds wanted;
    private final Pause rest = new Pause(REST_MILLIS, this::putBack);

    private HeldSize(final Stage stage, final WindowBounds wanted) {
        this.stage = stage;
        this.wanted = wanted;
    }

    /** Asks with a dialog of the system over a window, which has its size again afterwards. */
    public static <T> T during(final Window over, final Supplier<T> asking) {
        if (!(over instanceof Stage stage)) {
            return asking.get();
        }
        final HeldSize held = new HeldSize(stage, StagePlacing.boundsOf(stage));
        final T asked = asking.get();
        held.hold();
        return asked;
    }

    /** Holds a window at the size it has now. */
    static void hold(final Stage stage) {
        new HeldSize(stage, StagePlacing.boundsOf(stage)).hold();
    }

    private void hold() {
        final Subscription changes =
                Subscription.combine(
                        stage.widthProperty().subscribe(any -> rest.begin()),
                        stage.heightProperty().subscribe(any -> rest.begin()),
                        stage.maximizedProperty().subscribe(any -> rest.begin()));
        new Pause(MOMENT_MILLIS, changes::unsubscribe).begin();
    }

    private void putBack() {
        final WindowBounds now = StagePlacing.boundsOf(stage);
        if (stage.isShowing() && isLost(wanted, now, stage.getMinWidth(), stage.getMinHeight())) {
            StagePlacing.place(stage, wanted);
        }
    }

    /** Whether the toolkit, and not a person, made it that small. */
    static boolean isLost(
            final WindowBounds wanted,
            final WindowBounds now,
            final double leastWidth,
            final double leastHeight) {
        if (wanted.maximised() || now.maximised()) {
            return !now.maximised();
        }
        final boolean least = now.width() <= leastWidth && now.height() <= leastHeight;
        return least && (wanted.width() > leastWidth || wanted.height() > leastHeight);
    }
}
