package wireworthy.window.check;

import java.nio.file.Path;
import wireworthy.record.SumsInUse;
import wireworthy.window.Background;

/** What is checked in a test, with nothing done behind its back. */
final class Models {
    private Models() {}

    /** Keeps its vehicles in a folder of this one. */
    static VehicleModel in(final Path folder) {
        return new VehicleModel(
                new Shelf(folder.resolve("vehicles")), () -> SumsInUse.USUAL, Background.atOnce());
    }
}
