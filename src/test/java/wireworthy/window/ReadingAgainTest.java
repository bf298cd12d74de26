package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;
import wireworthy.working.Solver;

/** Practice while a long record is read again, as after an update of the program. */
class ReadingAgainTest extends WindowTest {
    private final CompletableFuture<Void> reading = new CompletableFuture<>();
    private final Learner learner =
            new Learner(folder.resolve("long.sqlite"), new Solver(), Evenings.CLOCK);
    private final PracticeModel model = new PracticeModel(slow());

    @Override
    protected List<Place> places() {
        return List.of(new PracticePlace(model, problem -> {}, InUse.USUAL));
    }

    /** The learner, whose record takes as long to read as the test wants. */
    private Trainer slow() {
        return (Trainer)
                Proxy.newProxyInstance(
                        Trainer.class.getClassLoader(),
                        new Class<?>[] {Trainer.class},
                        (proxy, method, arguments) -> {
                            if (method.getName().equals("reading")) {
                                return reading;
                            }
                            try {
                                return method.invoke(learner, arguments);
                            } catch (final InvocationTargetException e) {
                                throw e.getCause();
                            }
                        });
    }

    @Test
    void itIsSaidInWordsAndTheProblemComesByItself() throws TimeoutException {
        assertThat(reads(PracticeTexts.of("reading"))).as("at once").isFalse();
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> reads(PracticeTexts.of("reading")));
        assertThat(model.exercise()).isEmpty();
        assertThat(reads("No problem bank could be read.")).isFalse();

        reading.complete(null);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(reads(PracticeTexts.of("reading"))).isFalse();
        assertThat(reads(model.exercise().orElseThrow().ask())).isTrue();
        clickOn("Mark my answer");
    }

    @Test
    void whatCannotBeReadIsNotWaitedForForEver() {
        reading.completeExceptionally(new IllegalStateException("no disk"));
        WaitForAsyncUtils.waitForFxEvents();

        assertThat(model.exercise()).isPresent();
    }
}
