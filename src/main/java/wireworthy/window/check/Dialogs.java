package wireworthy.window.check;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/** Asks for files. */
interface Dialogs {
    /**
     * A file to read.
     *
     * @param kind what it holds, for people
     * @param ending without a dot
     */
    Optional<Path> open(Window over, String kind, String ending);

    /** A file to write, which may be there already: the dialog asks before it is replaced. */
    Optional<Path> save(Window over, String kind, Path proposed);

    /** Those of the system, beginning in a folder. */
    static Dialogs ofSystem(final Path folder) {
        return new Dialogs() {
            @Override
            public Optional<Path> open(final Window over, final String kind, final String ending) {
                return path(chooser(folder, kind, ending).showOpenDialog(over));
            }

            @Override
            public Optional<Path> save(final Window over, final String kind, final Path proposed) {
                final String name = String.valueOf(proposed.getFileName());
                final FileChooser chooser =
                        chooser(folder, kind, name.substring(name.lastIndexOf('.') + 1));
                chooser.setInitialFileName(name);
                return path(chooser.showSaveDialog(over));
            }
        };
    }

    private static FileChooser chooser(final Path folder, final String kind, final String ending) {
        final FileChooser chooser = new FileChooser();
        chooser.setTitle(kind);
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(kind, "*." + ending));
        if (Files.isDirectory(folder)) {
            chooser.setInitialDirectory(folder.toFile());
        }
        return chooser;
    }

    private static Optional<Path> path(final @org.jspecify.annotations.Nullable File file) {
        return Optional.ofNullable(file).map(File::toPath);
    }
}
