package wireworthy.vehicle;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Kills a program that edits a vehicle, at random moments: as often as {@code KILLS} in the
 * environment says, else 20 times where {@code CI} is set, else a few times.
 */
class VehicleKillTest {
    private static final long OLDEST_NANOS = 2_000_000_000;
    private static final int LONGEST_MILLIS = 2500;
    private static final Random RANDOM = new Random(41);

    @TempDir private Path folder;

    @Test
    void theFileIsWholeAndNotOldWhenTheProgramIsKilled() throws IOException, InterruptedException {
        final Map<String, String> environment = System.getenv();
        final String usual = environment.containsKey("CI") ? "20" : "3";
        final int kills = Integer.parseInt(environment.getOrDefault("KILLS", usual));
        for (int kill = 0; kill < kills; kill++) {
            killed(folder.resolve("heron-" + kill + ".json"));
        }
    }

    private void killed(final Path file) throws IOException, InterruptedException {
        VehicleFile.write(file, Heron.vehicle().withNotes("0"));
        final Map<Integer, Long> made = new HashMap<>();
        final Process editor = editor(file);
        final long killedAt = killAtRandom(editor, made);
        final VehicleRead read = VehicleFile.read(file);
        assertThat(read).isInstanceOf(VehicleRead.Whole.class);
        final Vehicle vehicle = ((VehicleRead.Whole) read).vehicle();
        assertThat(vehicle.circuits()).isEqualTo(Heron.vehicle().circuits());
        final int next = Integer.parseInt(vehicle.notes()) + 1;
        assertThat(killedAt - made.getOrDefault(next, killedAt))
                .as("age of the first change that is not in the file")
                .isLessThanOrEqualTo(OLDEST_NANOS);
    }

    private static Process editor(final Path file) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        KilledEditor.class.getName(),
                        file.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    /** When it was killed; the changes it made until then are noted with their moments. */
    private static long killAtRandom(final Process editor, final Map<Integer, Long> made)
            throws IOException, InterruptedException {
        try (BufferedReader out = editor.inputReader(StandardCharsets.UTF_8)) {
            made.put(Integer.valueOf(out.readLine()), System.nanoTime());
            final long end = System.nanoTime() + RANDOM.nextInt(LONGEST_MILLIS) * 1_000_000L;
            while (System.nanoTime() < end) {
                made.put(Integer.valueOf(out.readLine()), System.nanoTime());
            }
            final long killedAt = System.nanoTime();
            // Through the handle, as the process itself would close the pipe unread.
            editor.toHandle().destroyForcibly();
            editor.waitFor();
            return killedAt;
        }
    }
}
