package wireworthy.window.check;

import java.io.IOException;
import java.nio.file.Path;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import wireworthy.record.WholeFile;
import wireworthy.window.Background;

/** Writes a file one asked for, away from the window's thread, and says where it lies. */
final class Saving {
    private final Background background;
    private final ReadOnlyObjectWrapper<Said> said = new ReadOnlyObjectWrapper<>(Said.NOTHING);

    Saving(final Background background) {
        this.background = background;
    }

    /** Makes the content and writes it to a file. */
    void save(final Path file, final Supplier<byte[]> content) {
        said.set(new Said(CheckTexts.of("saving", "file", file), false));
        background.run(() -> written(file, content), said::set);
    }

    private static Said written(final Path file, final Supplier<byte[]> content) {
        try {
            WholeFile.write(file, content.get());
            return new Said(CheckTexts.of("saved", "file", file), false);
        } catch (final IOException e) {
            return new Said(CheckTexts.of("not-saved", "file", file), true);
        }
    }

    /** Another vehicle is open: what was said of the one before does not hold for it. */
    void forget() {
        said.set(Said.NOTHING);
    }

    ReadOnlyObjectProperty<Said> said() {
        return said.getReadOnlyProperty();
    }
}
