package wireworthy.window;

import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.Node;

/** Asks the person for a file or a folder; each title says what for. */
public interface FileAsking {
    /** A file to read with this ending; empty where the person thought better of it. */
    Optional<Path> open(Node from, String title, String ending);

    /** A file to write, with a name to begin from; empty where the person thought better of it. */
    Optional<Path> save(Node from, String title, String name, String ending);

    /** A folder to write to; empty where the person thought better of it. */
    Optional<Path> folder(Node from, String title);

    /** A folder to read; empty where the person thought better of it. */
    Optional<Path> folderToRead(Node from, String title);

    /**
     * The dialogs of the system.
     *
     * @param written where something was written last: there the next place to write is asked for
     */
    static FileAsking bySystem(final LastFolder written) {
        return new SystemDialogs(
                LastFolder.from(Path.of(System.getProperty("user.home", "."))), written);
    }
}
