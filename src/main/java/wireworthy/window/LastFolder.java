package wireworthy.window;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** The folder in which a person chose last: the next dialog begins there. */
final class LastFolder {
    private Path last;

    LastFolder(final Path first) {
        last = first;
    }

    /** The home of the person, until something is chosen. */
    static LastFolder atHome() {
        return new LastFolder(Path.of(System.getProperty("user.home", ".")));
    }

    /** A file was chosen. */
    void file(final Path file) {
        Optional.ofNullable(file.toAbsolutePath().getParent()).ifPresent(this::folder);
    }

    /** A folder was chosen. */
    void folder(final Path folder) {
        last = folder;
    }

    /** Where to begin; empty where it is gone, as a stick may have been taken out since. */
    Optional<Path> begin() {
        return Optional.of(last).filter(Files::isDirectory);
    }
}
