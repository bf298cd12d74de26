package wireworthy.record;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** A plain text file of unexpected errors; the one before it is kept when it has grown large. */
public final class ErrorLog {
    private static final long LARGEST_BYTES = 1024 * 1024;

    private final Path file;

    public ErrorLog(final Path file) {
        this.file = file;
    }

    /** Where the log is. */
    public Path file() {
        return file;
    }

    /**
     * Adds an entry at the end.
     *
     * @throws UncheckedIOException if the file cannot be written to
     */
    public synchronized void add(final String entry) {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            turnOver();
            Files.writeString(
                    file,
                    entry + "\n",
                    StandardCharsets.UTF_8,
                    StandardOpenOption.CREATE,
                    StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw new UncheckedIOException("The log cannot be written to " + file, e);
        }
    }

    private void turnOver() throws IOException {
        if (Files.exists(file) && Files.size(file) > LARGEST_BYTES) {
            Files.move(
                    file,
                    file.resolveSibling(file.getFileName() + ".old"),
                    StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
