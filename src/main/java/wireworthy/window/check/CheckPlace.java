package wireworthy.window.check;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Parent;
import wireworthy.record.SumsInUse;
import wireworthy.window.LastFolder;
import wireworthy.window.Place;
import wireworthy.window.Shell;

/** Where the sums of the builder's own vehicle are checked. */
public final class CheckPlace implements Place, AutoCloseable {
    /** The name under which the settings keep this place. */
    public static final String ID = "check";

    private final Supplier<SumsInUse> inUse;
    private final Shelf shelf;
    private final Dialogs dialogs;
    private Optional<CheckDesk> desk = Optional.empty();

    /**
     * @param folder where vehicles are kept
     * @param inUse what a new circuit goes by
     */
    public CheckPlace(final Path folder, final Supplier<SumsInUse> inUse) {
        this.inUse = inUse;
        shelf = new Shelf(folder);
        final Path home = Path.of(System.getProperty("user.home", "."));
        dialogs =
                Dialogs.ofSystem(
                        folder, LastFolder.keptIn(folder.resolve("last-folder.txt"), home));
    }

    @Override
    public String id() {
        return ID;
    }

    /** What stands on its terminal, in the language in use. */
    public static String name() {
        return CheckTexts.of("title");
    }

    @Override
    public String title() {
        return name();
    }

    /** Builds it, with the vehicle that was open last. */
    @Override
    public Parent build(final Shell shell) {
        final VehicleModel model = new VehicleModel(shelf, inUse, shell.background());
        final CheckDesk built = new CheckDesk(model, dialogs, shell.background());
        desk = Optional.of(built);
        model.openLast();
        return built;
    }

    /** What was built. */
    CheckDesk desk() {
        return desk.orElseThrow();
    }

    /** Writes what is not in the file yet. */
    @Override
    public void close() {
        desk.map(CheckDesk::model).ifPresent(VehicleModel::close);
    }
}
