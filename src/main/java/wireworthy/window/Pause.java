package wireworthy.window;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;

/**
 * Does something once it was not begun anew for a while. Only the toolkit's own thread may use it;
 * nothing is drawn while it waits.
 */
public final class Pause {
    private final Executor later;
    private final Runnable action;
    private long begun;

    public Pause(final long millis, final Runnable action) {
        later =
                CompletableFuture.delayedExecutor(
                        millis, TimeUnit.MILLISECONDS, Platform::runLater);
        this.action = action;
    }

    /** Waits from now on; what was begun before is not done. */
    public void begin() {
        begun++;
        final long mine = begun;
        later.execute(() -> end(mine));
    }

    private void end(final long which) {
        if (which == begun) {
            action.run();
        }
    }
}
