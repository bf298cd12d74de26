package wireworthy.vehicle;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class VehicleSaverTest {
    private static final long PATIENCE_SECONDS = 60;

    @TempDir private Path folder;

    /** Counts what it hears. */
    private static final class Heard implements VehicleSaver.Watcher {
        private final AtomicInteger saved = new AtomicInteger();
        private final CountDownLatch once = new CountDownLatch(1);
        private final CountDownLatch failed = new CountDownLatch(1);

        @Override
        public void saved() {
            saved.incrementAndGet();
            once.countDown();
        }

        @Override
        public void failed(final IOException why) {
            failed.countDown();
        }
    }

    @Test
    void manyChangesInARowAreWrittenOnce() throws InterruptedException {
        final Path file = folder.resolve("van.json");
        final Heard heard = new Heard();
        try (VehicleSaver saver = new VehicleSaver(file, heard)) {
            for (int i = 0; i <= 100; i++) {
                saver.save(Vehicle.named("van " + i));
            }
            assertThat(heard.once.await(PATIENCE_SECONDS, TimeUnit.SECONDS)).isTrue();
        }
        assertThat(VehicleFile.read(file))
                .isEqualTo(new VehicleRead.Whole(Vehicle.named("van 100")));
        assertThat(heard.saved).hasValueLessThan(10);
    }

    @Test
    void closingWritesWhatIsNotWrittenYet() {
        final Path file = folder.resolve("van.json");
        try (VehicleSaver saver = new VehicleSaver(file, new Heard())) {
            saver.save(Vehicle.named("van"));
            assertThat(saver.waiting()).isTrue();
        }
        assertThat(VehicleFile.read(file)).isEqualTo(new VehicleRead.Whole(Vehicle.named("van")));
    }

    @Test
    void aFileThatCannotBeWrittenIsTriedAgain() throws IOException, InterruptedException {
        final Path place = Files.writeString(folder.resolve("place"), "in the way");
        final Path file = place.resolve("van.json");
        final Heard heard = new Heard();
        try (VehicleSaver saver = new VehicleSaver(file, heard)) {
            saver.save(Vehicle.named("van"));
            assertThat(heard.failed.await(PATIENCE_SECONDS, TimeUnit.SECONDS)).isTrue();
            assertThat(saver.waiting()).isTrue();
            Files.delete(place);
            assertThat(heard.once.await(PATIENCE_SECONDS, TimeUnit.SECONDS)).isTrue();
        }
        assertThat(VehicleFile.read(file)).isEqualTo(new VehicleRead.Whole(Vehicle.named("van")));
    }
}
