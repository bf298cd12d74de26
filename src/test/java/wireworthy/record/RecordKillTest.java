package wireworthy.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Kills a program at random moments while it writes; {@code -Drecord.kills=500} for more. */
class RecordKillTest {
    private static final int KILLS = Integer.getInteger("record.kills", 50);
    private static final int APART = 1_000_000;
    private static final int MOST_MILLIS = 60;

    private final Random random = new Random(5);

    @Test
    void everyAnswerSaidToBeKeptIsThereAfterTheProgramIsKilled(@TempDir final Path folder)
            throws IOException, InterruptedException {
        final Path file = folder.resolve("record.sqlite");
        final List<Long> kept = new ArrayList<>();
        for (int kill = 0; kill < KILLS; kill++) {
            kept.addAll(keptUntilKilled(file, APART * kill));
        }
        try (RecordFile record = RecordFile.open(file)) {
            assertThat(record.setAside()).isEmpty();
            assertThat(kept).hasSizeGreaterThan(KILLS);
            assertThat(record.answers("robin")).extracting(Answer::seed).containsAll(kept);
        }
    }

    private List<Long> keptUntilKilled(final Path file, final int first)
            throws IOException, InterruptedException {
        final List<Long> kept = new ArrayList<>();
        try (Writing writing = Writing.start(file, first, APART)) {
            kept.add(Long.valueOf(writing.line()));
            TimeUnit.MICROSECONDS.sleep(random.nextInt(MOST_MILLIS * 1000));
            writing.kill().forEach(line -> kept.add(Long.valueOf(line)));
            writing.process().waitFor();
        }
        return kept;
    }

    @Test
    void twoProgramsCanWriteAtOnce(@TempDir final Path folder) throws IOException {
        final Path file = folder.resolve("record.sqlite");
        try (Writing one = Writing.start(file, 0, 60);
                Writing other = Writing.start(file, APART, 60)) {
            assertThat(one.out().lines()).hasSize(60);
            assertThat(other.out().lines()).hasSize(60);
        }
        try (RecordFile record = RecordFile.open(file)) {
            assertThat(record.answers("robin")).hasSize(120);
        }
    }
}
