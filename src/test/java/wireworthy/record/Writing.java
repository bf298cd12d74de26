package wireworthy.record;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A program of its own that writes to a record. */
record Writing(Process process, BufferedReader out) implements AutoCloseable {
    /**
     * Starts it.
     *
     * @param before words of a command that runs it; may be none
     * @param first number of its first answer
     */
    static Writing start(
            final Path file, final int first, final int answers, final String... before)
            throws IOException {
        final List<String> command = new ArrayList<>(List.of(before));
        command.addAll(
                List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        KilledWriter.class.getName(),
                        file.toString(),
                        String.valueOf(first),
                        String.valueOf(answers)));
        final Process process =
                new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
        return new Writing(process, process.inputReader(StandardCharsets.UTF_8));
    }

    /** The next line it prints: the number of an answer that it has been told is kept. */
    String line() throws IOException {
        return String.valueOf(out.readLine());
    }

    /** Kills it, and gives what it had printed before. */
    Stream<String> kill() {
        // Through the handle, as the process itself would close the pipe unread.
        process.toHandle().destroyForcibly();
        return out.lines();
    }

    @Override
    public void close() throws IOException {
        process.destroyForcibly();
        out.close();
    }
}
