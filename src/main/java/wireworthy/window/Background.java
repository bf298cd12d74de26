package wireworthy.window;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;

/** Work too long for the thread that draws the window: anything that may take over 50 ms. */
@FunctionalInterface
public interface Background {
    /**
     * Does the work away from the window and then hands its result to {@code then} on the window's
     * thread. An exception in either goes to the uncaught-error handler.
     */
    <T> void run(Supplier<T> work, Consumer<T> then);

    /** Another one, for work so long that others must not wait for it. */
    default Background apart() {
        return this;
    }

    /** Has something said on the window's thread while the work is still being done. */
    default void meanwhile(final Runnable said) {
        said.run();
    }

    /** Work done at once on the calling thread, for tests. */
    static Background atOnce() {
        return new Background() {
            @Override
            public <T> void run(final Supplier<T> work, final Consumer<T> then) {
                then.accept(work.get());
            }
        };
    }

    /** Work done in turn on one thread of its own, which does not keep the program alive. */
    static Background onThread() {
        final ExecutorService worker =
                Executors.newSingleThreadExecutor(
                        work -> {
                            final Thread thread = new Thread(work, "background");
                            thread.setDaemon(true);
                            return thread;
                        });
        return new Background() {
            @Override
            public <T> void run(final Supplier<T> work, final Consumer<T> then) {
                worker.execute(
                        () -> {
                            final T result = work.get();
                            Platform.runLater(() -> then.accept(result));
                        });
            }

            @Override
            public Background apart() {
                return onThread();
            }

            @Override
            public void meanwhile(final Runnable said) {
                Platform.runLater(said);
            }
        };
    }
}
