package wireworthy.window.check;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import wireworthy.window.HeldSize;
import wireworthy.window.LastFolder;

/** Asks for files. */
interface Dialogs {
    /** How the files of vehicles end. */
    String VEHICLE = "json";

    /**
     * A file to read.
     *
     * @param kind what it holds, for people
     * @param ending without a dot
     */
    Optional<Path> open(Window over, String kind, String ending);

    /** A file to write, which may be there already: the dialog asks before it is replaced. */
    Optional<Path> save(Window over, String kind, Path proposed);

    /**
     * Those of the system.
     *
     * @param vehicles the folder where vehicles are kept
     * @param others where files of any other kind were last chosen
     */
    static Dialogs ofSystem(final Path vehicles, final LastFolder others) {
        return new Dialogs() {
            @Override
            public Optional<Path> open(final Window over, final String kind, final String ending) {
                final FileChooser chooser = chooser(kind, ending);
                return remembered(
                        HeldSize.during(over, () -> path(chooser.showOpenDialog(over))), ending);
            }

            @Override
            public Optional<Path> save(final Window over, final String kind, final Path proposed) {
                final String name = String.valueOf(proposed.getFileName());
                final String ending = name.substring(name.lastIndexOf('.') + 1);
                final FileChooser chooser = chooser(kind, ending);
                chooser.setInitialFileName(name);
                return remembered(
                        HeldSize.during(over, () -> path(chooser.showSaveDialog(over))), ending);
            }

            private FileChooser chooser(final String kind, final String ending) {
                return Dialogs.chooser(
                        ending.equals(VEHICLE) ? vehicles : others.begin(), kind, ending);
            }

            private Optional<Path> remembered(final Optional<Path> chosen, final String ending) {
                chosen.filter(it -> !ending.equals(VEHICLE)).ifPresent(others::file);
                return chosen;
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
