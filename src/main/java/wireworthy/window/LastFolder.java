package wireworthy.window;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import wireworthy.record.WholeFile;

/** The folder in which a person chose last: the next dialog begins there. */
public final class LastFolder {
    private static final int LONGEST = 4096;

    private final Path home;
    private final Optional<Path> kept;
    private Optional<Path> last = Optional.empty();

    private LastFolder(final Path home, final Optional<Path> kept) {
        this.home = home;
        this.kept = kept;
    }

    /** Forgotten when the program ends. */
    static LastFolder from(final Path home) {
        return new LastFolder(home, Optional.empty());
    }

    /**
     * Remembered in a file, which is made with the first choice.
     *
     * @param home where it begins, in its folder of documents if it has one
     */
    public static LastFolder keptIn(final Path file, final Path home) {
        return new LastFolder(home, Optional.of(file));
    }

    /** A file was chosen. */
    public void file(final Path file) {
        Optional.ofNullable(file.toAbsolutePath().normalize().getParent()).ifPresent(this::folder);
    }

    /** A folder was chosen. */
    void folder(final Path folder) {
        last = Optional.of(folder);
        kept.ifPresent(file -> write(file, folder));
    }

    /** Where to begin; where it is gone, as a stick may be, among the documents or at home. */
    public Path begin() {
        return chosen().orElseGet(this::first);
    }

    /** What was chosen last, if it is there. */
    Optional<Path> chosen() {
        return last.or(() -> kept.flatMap(LastFolder::read)).filter(Files::isDirectory);
    }

    private Path first() {
        return Stream.of(home.resolve("Documents"), home.resolve("Dokumente"))
                .filter(Files::isDirectory)
                .findFirst()
                .orElse(home);
    }

    private static Optional<Path> read(final Path file) {
        try {
            return Files.exists(file) && Files.size(file) <= LONGEST
                    ? Optional.of(Path.of(Files.readString(file).strip()))
                    : Optional.empty();
        } catch (final IOException | InvalidPathException e) {
            // A help, not data: without it one looks from the beginning.
            return Optional.empty();
        }
    }

    private static void write(final Path file, final Path folder) {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            WholeFile.write(file, folder.toString().getBytes(StandardCharsets.UTF_8));
        } catch (final IOException e) {
            // As above.
            return;
        }
    }
}
