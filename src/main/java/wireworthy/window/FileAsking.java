package wireworthy.window;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.Node;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import org.jspecify.annotations.Nullable;

/** Asks the person for a file or a folder. */
public interface FileAsking {
    /** A file to read with this ending; empty where the person thought better of it. */
    Optional<Path> open(Node from, String ending);

    /** A file to write, with a name to begin from; empty where the person thought better of it. */
    Optional<Path> save(Node from, String name, String ending);

    /** A folder to write to; empty where the person thought better of it. */
    Optional<Path> folder(Node from, String title);

    /** The dialogs of the system; each begins where the last one ended, the first one at home. */
    static FileAsking bySystem() {
        return new FileAsking() {
            private final LastFolder last =
                    LastFolder.from(Path.of(System.getProperty("user.home", ".")));

            @Override
            public Optional<Path> open(final Node from, final String ending) {
                return file(chooser(ending).showOpenDialog(from.getScene().getWindow()));
            }

            @Override
            public Optional<Path> save(final Node from, final String name, final String ending) {
                final FileChooser chooser = chooser(ending);
                chooser.setInitialFileName(name + "." + ending);
                return file(chooser.showSaveDialog(from.getScene().getWindow()));
            }

            @Override
            public Optional<Path> folder(final Node from, final String title) {
                final DirectoryChooser chooser = new DirectoryChooser();
                chooser.setTitle(title);
                begin().ifPresent(chooser::setInitialDirectory);
                final Optional<Path> folder = path(chooser.showDialog(from.getScene().getWindow()));
                folder.ifPresent(last::folder);
                return folder;
            }

            private FileChooser chooser(final String ending) {
                final FileChooser chooser = new FileChooser();
                chooser.getExtensionFilters()
                        .setAll(new FileChooser.ExtensionFilter("." + ending, "*." + ending));
                begin().ifPresent(chooser::setInitialDirectory);
                return chooser;
            }

            private Optional<File> begin() {
                return Optional.of(last.begin()).filter(Files::isDirectory).map(Path::toFile);
            }

            private Optional<Path> file(final @Nullable File chosen) {
                final Optional<Path> file = path(chosen);
                file.ifPresent(last::file);
                return file;
            }

            private Optional<Path> path(final @Nullable File chosen) {
                return Optional.ofNullable(chosen).map(File::toPath);
            }
        };
    }
}
