package wireworthy.window;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.Node;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;

/**
 * The dialogs of the system. What is read often lies on somebody's stick, where nothing of one's
 * own belongs: so it is kept apart where one read last and where one wrote last.
 */
final class SystemDialogs implements FileAsking {
    private final LastFolder read;
    private final LastFolder written;

    SystemDialogs(final LastFolder read, final LastFolder written) {
        this.read = read;
        this.written = written;
    }

    @Override
    public Optional<Path> open(final Node from, final String title, final String ending) {
        final Window over = window(from);
        final Optional<Path> file =
                HeldSize.during(over, () -> path(toOpen(title, ending).showOpenDialog(over)));
        file.ifPresent(read::file);
        return file;
    }

    FileChooser toOpen(final String title, final String ending) {
        return chooser(title, ending, read);
    }

    @Override
    public Optional<Path> save(
            final Node from, final String title, final String name, final String ending) {
        final Window over = window(from);
        final Optional<Path> file =
                HeldSize.during(over, () -> path(toSave(title, name, ending).showSaveDialog(over)));
        file.ifPresent(written::file);
        return file;
    }

    FileChooser toSave(final String title, final String name, final String ending) {
        final FileChooser chooser = chooser(title, ending, written);
        chooser.setInitialFileName(name + "." + ending);
        return chooser;
    }

    @Override
    public Optional<Path> folder(final Node from, final String title) {
        final Optional<Path> folder = shown(toWriteIn(title), from);
        folder.ifPresent(written::folder);
        return folder;
    }

    /** At a laptop nothing was written yet: the folder of the hand-ins is near the sheet. */
    DirectoryChooser toWriteIn(final String title) {
        return chooser(title, written.chosen().or(read::chosen).orElseGet(written::begin));
    }

    @Override
    public Optional<Path> folderToRead(final Node from, final String title) {
        final Optional<Path> folder = shown(chooser(title, read.begin()), from);
        folder.ifPresent(read::folder);
        return folder;
    }

    private static Optional<Path> shown(final DirectoryChooser chooser, final Node from) {
        final Window over = window(from);
        return HeldSize.during(over, () -> path(chooser.showDialog(over)));
    }

    private static DirectoryChooser chooser(final String title, final Path folder) {
        final DirectoryChooser chooser = new DirectoryChooser();
        chooser.setTitle(title);
        directory(folder).ifPresent(chooser::setInitialDirectory);
        return chooser;
    }

    private static FileChooser chooser(
            final String title, final String ending, final LastFolder last) {
        final FileChooser chooser = new FileChooser();
        chooser.setTitle(title);
        chooser.getExtensionFilters()
                .setAll(new FileChooser.ExtensionFilter("." + ending, "*." + ending));
        directory(last.begin()).ifPresent(chooser::setInitialDirectory);
        return chooser;
    }

    private static Optional<File> directory(final Path folder) {
        return Optional.of(folder).filter(Files::isDirectory).map(Path::toFile);
    }

    private static Window window(final Node from) {
        return from.getScene().getWindow();
    }

    private static Optional<Path> path(final @Nullable File chosen) {
        return Optional.ofNullable(chosen).map(File::toPath);
    }
}
