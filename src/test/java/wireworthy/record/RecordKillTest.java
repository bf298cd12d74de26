package wireworthy.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecordKillTest {
    private static final int KILLS = 10;

    @Test
    void everyAnswerSaidToBeKeptIsThereAfterTheProgramIsKilled(@TempDir final Path folder)
            throws IOException, InterruptedException {
        final Path file = folder.resolve("record.sqlite");
        final List<Long> kept = new ArrayList<>();
        for (int kill = 0; kill < KILLS; kill++) {
            final long before = kept.size();
            writeUntilKilled(file, 1_000_000 * kill, 5 + 7 * kill, kept);
            assertThat(kept.size()).isGreaterThan((int) before);
        }
        try (RecordFile record = RecordFile.open(file)) {
            assertThat(record.setAside()).isEmpty();
            assertThat(record.answers("robin")).extracting(Answer::seed).containsAll(kept);
        }
    }

    private static void writeUntilKilled(
            final Path file, final int first, final int lines, final List<Long> kept)
            throws IOException, InterruptedException {
        final Process writer =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-cp",
                                System.getProperty("java.class.path"),
                                KilledWriter.class.getName(),
                                file.toString(),
                                String.valueOf(first))
                        .redirectError(ProcessBuilder.Redirect.INHERIT)
                        .start();
        try (BufferedReader out = writer.inputReader(StandardCharsets.UTF_8)) {
            for (int i = 0; i < lines; i++) {
                kept.add(Long.valueOf(out.readLine()));
            }
            // Through the handle, as the process itself would close the pipe unread.
            writer.toHandle().destroyForcibly();
            out.lines().forEach(line -> kept.add(Long.valueOf(line)));
        }
        writer.waitFor();
    }
}
