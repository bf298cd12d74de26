package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.util.List;
import java.util.OptionalLong;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicBoolean;
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
        return List.of(
                new PracticePlace(model, problem -> {}, InUse.USUAL), new TestPlace("Lessons"));
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
                            if (method.getName().equals("toRead")) {
                                return OptionalLong.of(1_204_500);
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
        final String count = PracticeTexts.of("reading.count", "count", "1\u00a0204\u00a0500");
        WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> asked(count));
        assertThat(model.exercise()).isEmpty();
        assertThat(reads("No problem bank could be read.")).isFalse();

        reading.complete(null);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(reads(count)).isFalse();
        assertThat(reads(model.exercise().orElseThrow().ask())).isTrue();
        clickOn("Mark my answer");
    }

    /** Whether a text stands there; looked for where texts are put, between one and the next. */
    private boolean asked(final String text) throws ExecutionException, InterruptedException {
        return WaitForAsyncUtils.asyncFx(() -> reads(text)).get();
    }

    @Test
    void theQuestionsOfALessonWaitForTheRecord() {
        final AtomicBoolean asked = new AtomicBoolean();
        interact(() -> window.go("lessons"));
        interact(
                () -> {
                    model.beginWith(
                            () -> {
                                asked.set(true);
                                model.next();
                            });
                    window.go(PracticePlace.ID);
                });
        assertThat(asked).isFalse();

        reading.complete(null);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(asked).isTrue();
        assertThat(model.exercise()).isPresent();
    }

    @Test
    void whatCannotBeReadIsNotWaitedForForEver() {
        reading.completeExceptionally(new IllegalStateException("no disk"));
        WaitForAsyncUtils.waitForFxEvents();

        assertThat(model.exercise()).isPresent();
    }
}
