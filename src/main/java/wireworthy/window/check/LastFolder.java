package wireworthy.window.check;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import wireworthy.record.WholeFile;

/** The folder in which a file of the builder's own was last chosen. */
final class LastFolder {
    private static final int LONGEST = 4096;

    private final Path kept;
    private final Path home;

    /**
     * @param kept the file that remembers it, made with the first choice
     * @param home where it begins, in its folder of documents if it has one
     */
    LastFolder(final Path kept, final Path home) {
        this.kept = kept;
        this.home = home;
    }

    /** Where to begin to look. */
    Path folder() {
        return Stream.concat(
                        last().stream(),
                        Stream.of(home.resolve("Documents"), home.resolve("Dokumente")))
                .filter(Files::isDirectory)
                .findFirst()
                .orElse(home);
    }

    private Optional<Path> last() {
        try {
            return Files.exists(kept) && Files.size(kept) <= LONGEST
                    ? Optional.of(Path.of(Files.readString(kept).strip()))
                    : Optional.empty();
        } catch (final IOException | InvalidPathException e) {
            // A help, not data: without it one looks from the beginning.
            return Optional.empty();
        }
    }

    /** Remembers where a file was chosen. */
    void chosen(final Path file) {
        final Path folder = file.toAbsolutePath().normalize().getParent();
        try {
            if (folder != null) {
                Files.createDirectories(kept.toAbsolutePath().getParent());
                WholeFile.write(kept, folder.toString().getBytes(StandardCharsets.UTF_8));
            }
        } catch (final IOException e) {
            // As above.
            return;
        }
    }
}
