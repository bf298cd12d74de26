package wireworthy.record;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.function.UnaryOperator;

/**
 * Holds the settings in use and writes them down a moment after the last change, off the calling
 * thread, so that dragging a window edge does not write a hundred files.
 */
public final class SettingsKeeper implements AutoCloseable {
    private static final long PAUSE_MILLIS = 500;

    private final SettingsFile file;
    private final Executor later =
            CompletableFuture.delayedExecutor(
                    PAUSE_MILLIS, TimeUnit.MILLISECONDS, SettingsKeeper::onThread);
    private Settings settings;
    private Settings written;
    private boolean waiting;

    public SettingsKeeper(final SettingsFile file) {
        this.file = file;
        this.settings = file.read();
        this.written = settings;
    }

    /** The settings in use. */
    public synchronized Settings now() {
        return settings;
    }

    /** Changes the settings; they are written shortly after. */
    public synchronized void change(final UnaryOperator<Settings> how) {
        settings = how.apply(settings);
        writeSoon();
    }

    /** Writes what is not written yet. */
    @Override
    public void close() {
        write();
    }

    private void writeSoon() {
        if (!waiting) {
            waiting = true;
            later.execute(this::write);
        }
    }

    private synchronized void write() {
        // Compared here and not at each change, where a window that opens would wait for it.
        final boolean changed = waiting && !settings.equals(written);
        waiting = false;
        if (changed) {
            file.write(settings);
            written = settings;
        }
    }

    /** A thread of its own, so that a failure reaches the uncaught-error handler. */
    private static void onThread(final Runnable work) {
        final Thread thread = new Thread(work, "settings");
        thread.setDaemon(true);
        thread.start();
    }
}
