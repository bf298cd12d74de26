package wireworthy.window.check;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import wireworthy.vehicle.Vehicle;
import wireworthy.vehicle.VehicleSaver;
import wireworthy.window.Background;

/** Keeps the open vehicle in its file, and says where and whether it is. */
final class Keeper implements AutoCloseable {
    private final Shelf shelf;
    private final Background background;
    private final ReadOnlyObjectWrapper<Said> said = new ReadOnlyObjectWrapper<>(Said.NOTHING);
    private Optional<Path> file = Optional.empty();
    private Optional<Path> made = Optional.empty();
    private Optional<VehicleSaver> saver = Optional.empty();

    Keeper(final Shelf shelf, final Background background) {
        this.shelf = shelf;
        this.background = background;
    }

    /** From now on another vehicle is open. */
    void follow(final Optional<Path> other) {
        close();
        file = other;
        saver = other.map(it -> new VehicleSaver(it, new Hearing(it)));
        other.ifPresent(shelf::opened);
        say(other.map(it -> kept(it)).orElse(""), false);
    }

    /** Keeps a change; a vehicle that has no file yet gets one. */
    void keep(final Vehicle vehicle) {
        if (file.isEmpty()) {
            made = Optional.of(shelf.fresh(vehicle.name()));
            follow(made);
        }
        saver.ifPresent(it -> it.save(vehicle));
    }

    /**
     * Calls a file that was made here as its vehicle is called now: it was made at the first letter
     * of the name.
     */
    void callAs(final String name) {
        file.filter(it -> made.equals(file) && !shelf.isNamed(it, name))
                .ifPresent(it -> move(it, name));
    }

    private void move(final Path from, final String name) {
        close();
        final Path to = shelf.fresh(name);
        try {
            Files.move(from, to);
            made = Optional.of(to);
        } catch (final IOException e) {
            // The name of the file is a help, not data: it stays where it is.
            made = Optional.empty();
        }
        follow(Files.exists(to) ? Optional.of(to) : Optional.of(from));
    }

    /** Says something of a vehicle that has no file yet. */
    void tell(final String text) {
        say(text, false);
    }

    /** The file of the vehicle; empty before its first change. */
    Optional<Path> file() {
        return file;
    }

    /** Where it is kept, or why it is not; nothing before its first change. */
    ReadOnlyObjectProperty<Said> said() {
        return said.getReadOnlyProperty();
    }

    private static String kept(final Path path) {
        return CheckTexts.of("kept-in", "file", String.valueOf(path.getFileName()));
    }

    /** Writes what is not written yet. */
    @Override
    public void close() {
        saver.ifPresent(VehicleSaver::close);
        saver = Optional.empty();
    }

    private void say(final String text, final boolean trouble) {
        said.set(new Said(text, trouble));
    }

    /** Hears from the saver's thread and tells the window's. */
    private final class Hearing implements VehicleSaver.Watcher {
        private final Path path;

        Hearing(final Path path) {
            this.path = path;
        }

        @Override
        public void saved() {
            tell(kept(path), false);
        }

        @Override
        public void failed(final IOException why) {
            tell(CheckTexts.of("not-kept", "file", path), true);
        }

        private void tell(final String text, final boolean trouble) {
            background.run(
                    () -> text,
                    it -> {
                        if (file.equals(Optional.of(path))) {
                            say(it, trouble);
                        }
                    });
        }
    }
}
