package wireworthy.vehicle;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Keeps a vehicle's file up to date while it is edited: whole at any moment, and a third of a
 * second behind at most, as long as the disk can keep up. Writes off the calling thread.
 */
public final class VehicleSaver implements AutoCloseable {
    private static final long PAUSE_MILLIS = 300;
    private static final long AGAIN_MILLIS = 2000;

    private final Path file;
    private final Watcher watcher;
    private final AtomicReference<Optional<Vehicle>> unsaved =
            new AtomicReference<>(Optional.empty());
    private final ScheduledExecutorService later =
            Executors.newSingleThreadScheduledExecutor(VehicleSaver::thread);

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
        later.execute(() -> VehicleWriter.text(Vehicle.named("")));
    }

    /** Saves a vehicle shortly; of several in a row the last one. */
    public void save(final Vehicle vehicle) {
        if (unsaved.getAndSet(Optional.of(vehicle)).isEmpty()) {
            writeIn(PAUSE_MILLIS);
        }
    }

    /** Whether a change is not in the file yet. */
    public boolean waiting() {
        return unsaved.get().isPresent();
    }

    /** Writes what is not written yet, and ends. */
    @Override
    public void close() {
        later.shutdownNow();
        writeUnsaved();
    }

    private void writeIn(final long millis) {
        later.schedule(this::writeUnsaved, millis, TimeUnit.MILLISECONDS);
    }

    private synchronized void writeUnsaved() {
        unsaved.getAndSet(Optional.empty()).ifPresent(this::write);
    }

    private void write(final Vehicle vehicle) {
        try {
            VehicleFile.write(file, vehicle);
            watcher.saved();
        } catch (final IOException why) {
            // Unless something newer waits already, and so has its own turn.
            if (unsaved.compareAndSet(Optional.empty(), Optional.of(vehicle))
                    && !later.isShutdown()) {
                writeIn(AGAIN_MILLIS);
            }
            watcher.failed(why);
        }
    }

    private static Thread thread(final Runnable work) {
        final Thread thread = new Thread(work, "vehicle-saver");
        thread.setDaemon(true);
        return thread;
    }
}
