package wireworthy.vehicle;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;

/**
 * Keeps a vehicle's file up to date while it is edited: whole at any moment, and a third of a
 * second behind at most, as long as the disk can keep up. Writes off the calling thread.
 */
public final class VehicleSaver implements AutoCloseable {
    private static final long PAUSE_MILLIS = 300;
    private static final long AGAIN_MILLIS = 2000;

    private final Path file;
    private final Watcher watcher;
    private final Executor soon = after(PAUSE_MILLIS);
    private final Executor again = after(AGAIN_MILLIS);
    private final Object writing = new Object();
    private Optional<Vehicle> unsaved = Optional.empty();

    /** Hears, on another thread, what becomes of the file. */
    public interface Watcher {
        /** All changes up to now are in the file. */
        void saved();

        /** The file could not be written; it is tried again, and nothing is lost meanwhile. */
        void failed(IOException why);
    }

    public VehicleSaver(final Path file, final Watcher watcher) {
        this.file = file;
        this.watcher = watcher;
        // The first text of all loads the writer, which takes as long as hundreds of later ones.
        onThread(() -> VehicleWriter.text(Vehicle.named("")));
    }

    /** Saves a vehicle shortly; of several in a row the last one. */
    public synchronized void save(final Vehicle vehicle) {
        if (unsaved.isEmpty()) {
            soon.execute(this::write);
        }
        unsaved = Optional.of(vehicle);
    }

    /** Whether a change is not in the file yet. */
    public synchronized boolean waiting() {
        return unsaved.isPresent();
    }

    /** Writes what is not written yet. */
    @Override
    public void close() {
        write();
    }

    private void write() {
        synchronized (writing) {
            next().ifPresent(this::write);
        }
    }

    private synchronized Optional<Vehicle> next() {
        final Optional<Vehicle> next = unsaved;
        unsaved = Optional.empty();
        return next;
    }

    private void write(final Vehicle vehicle) {
        try {
            VehicleFile.write(file, vehicle);
            watcher.saved();
        } catch (final IOException why) {
            keep(vehicle);
            watcher.failed(why);
        }
    }

    /** Keeps what could not be written, unless something newer waits already for its own turn. */
    private synchronized void keep(final Vehicle vehicle) {
        if (unsaved.isEmpty()) {
            unsaved = Optional.of(vehicle);
            again.execute(this::write);
        }
    }

    private static Executor after(final long millis) {
        return CompletableFuture.delayedExecutor(
                millis, TimeUnit.MILLISECONDS, VehicleSaver::onThread);
    }

    /** A thread of its own, so that a failure reaches the uncaught-error handler. */
    private static void onThread(final Runnable work) {
        final Thread thread = new Thread(work, "vehicle-saver");
        thread.setDaemon(true);
        thread.start();
    }
}
