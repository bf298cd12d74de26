package wireworthy.window;

import java.lang.reflect.Method;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.application.Platform;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.InvocationInterceptor;
import org.junit.jupiter.api.extension.ReflectiveInvocationContext;
import org.testfx.api.FxToolkit;

/** Starts the toolkit once and runs test methods on its thread. */
final class FxThread implements BeforeAllCallback, InvocationInterceptor {
    private static final long PATIENCE_SECONDS = 60;

    @Override
    public void beforeAll(final ExtensionContext context) throws TimeoutException {
        FxToolkit.registerPrimaryStage();
    }

    @Override
    public void interceptTestMethod(
            final Invocation<Void> test,
            final ReflectiveInvocationContext<Method> method,
            final ExtensionContext context)
            throws Throwable {
        onThread(test);
    }

    @Override
    public void interceptTestTemplateMethod(
            final Invocation<Void> test,
            final ReflectiveInvocationContext<Method> method,
            final ExtensionContext context)
            throws Throwable {
        onThread(test);
    }

    private static void onThread(final Invocation<Void> test) throws Throwable {
        final CompletableFuture<Void> done = new CompletableFuture<>();
        Platform.runLater(
                () -> {
                    try {
                        done.complete(test.proceed());
                    } catch (Throwable failure) {
                        done.completeExceptionally(failure);
                    }
                });
        try {
            done.get(PATIENCE_SECONDS, TimeUnit.SECONDS);
        } catch (ExecutionException failure) {
            throw failure.getCause();
        }
    }
}
