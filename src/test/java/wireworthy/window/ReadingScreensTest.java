package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wireworthy.facts.FactTables;
import wireworthy.lessons.LessonHeading;
import wireworthy.lessons.Lessons;
import wireworthy.record.SettingsFile;
import wireworthy.record.SettingsKeeper;
import wireworthy.working.Solver;

/** Lessons and tables as pictures; nothing cut off, nothing without a name. */
@FxTest
class ReadingScreensTest {
    private static final Solver SOLVER = new Solver();
    private static final Lessons LESSONS = Lessons.read(SOLVER, Optional.empty());

    /**
     * Text and tables, a figure, a long working: as pictures in every setting, not in light alone.
     */
    private static final List<String> LOOKED_AT_CLOSELY =
            List.of("before-you-touch", "floor-and-ceiling", "voltage-drop");

    // Settings are written a little later, on a thread of their own.
    @TempDir(cleanup = CleanupMode.NEVER)
    private Path folder;

    static Stream<String> lessons() {
        return LESSONS.contents().stream().map(LessonHeading::id);
    }

    static Stream<String> tables() {
        return FactTables.ids().stream();
    }

    @ParameterizedTest
    @MethodSource("lessons")
    void nothingOfALessonIsCutOff(final String id) {
        for (final Screens.Setting setting : Screens.Setting.values()) {
            final Scene scene = Screens.scene(window(lesson(id)), setting);
            assertThat(Screens.cutOff(scene.getRoot())).as("%s", setting).isEmpty();
            assertThat(Accessibility.unlabelled(scene.getRoot())).isEmpty();
            if (setting == Screens.Setting.LIGHT || LOOKED_AT_CLOSELY.contains(id)) {
                picture("lesson-" + id, scene, setting);
            }
        }
    }

    @Test
    void aWordOfTheTradeIsExplainedInEverySetting() {
        for (final Screens.Setting setting : Screens.Setting.values()) {
            final Scene scene = Screens.scene(window(lesson("circuits")), setting);
            ((Hyperlink) scene.getRoot().lookup(".glossary-word")).fire();
            Screens.settle(scene);
            assertThat(scene.getRoot().lookupAll(".meaning")).hasSize(1);
            assertThat(Screens.cutOff(scene.getRoot())).as("%s", setting).isEmpty();
            assertThat(Accessibility.unlabelled(scene.getRoot())).isEmpty();
            Screens.write("lesson-word", setting, scene);
        }
    }

    /** Its beginning, middle and end. */
    private static void picture(final String name, final Scene scene, final Screens.Setting in) {
        Screens.write(name, in, scene);
        scrolled(scene.getRoot(), 0.4);
        Screens.write(name + "-middle", in, scene);
        scrolled(scene.getRoot(), 1);
        Screens.write(name + "-end", in, scene);
    }

    @Test
    void theTablesAreRendered() {
        Screens.render("tables", () -> window(table("thin-wall")));
        Screens.render("tables-wide", () -> window(table("fuse-series")));
        Screens.render("tables-found", () -> window(found("AWG")));
    }

    @ParameterizedTest
    @MethodSource("tables")
    void nothingOfATableIsCutOff(final String id) {
        for (final Screens.Setting setting :
                List.of(Screens.Setting.LARGE, Screens.Setting.SMALL, Screens.Setting.LARGEST)) {
            final Scene scene = Screens.scene(window(table(id)), setting);
            // The table makes room for the scroll bar that it brings.
            Screens.settle(scene);
            assertThat(Screens.cutOff(scene.getRoot())).as("%s", setting).isEmpty();
            assertThat(Screens.beside(scene.getRoot())).as("%s", setting).isEmpty();
            assertThat(scene.getRoot().lookupAll(".plain-table"))
                    .as("%s", setting)
                    .allMatch(ReadingScreensTest::hasRoom);
            assertThat(Accessibility.unlabelled(scene.getRoot())).isEmpty();
        }
    }

    private static Place lesson(final String id) {
        final TestDesk desk = new TestDesk();
        desk.last = Optional.of(id);
        desk.read.add("power");
        return new LessonsPlace(() -> LESSONS, SOLVER, desk);
    }

    private static Place table(final String id) {
        final TablesPlace place = new TablesPlace(InUse.USUAL);
        place.open(id);
        return place;
    }

    private static Place found(final String text) {
        final TablesPlace place = new TablesPlace(InUse.USUAL);
        place.find(text);
        return place;
    }

    private Parent window(final Place place) {
        final SettingsKeeper settings =
                new SettingsKeeper(new SettingsFile(folder.resolve("settings.json")));
        final Scene scene =
                new MainWindow(List.of(place), settings, Background.atOnce()).open().scene();
        final Parent root = scene.getRoot();
        scene.setRoot(new javafx.scene.Group());
        return root;
    }

    private static boolean hasRoom(final Node table) {
        return ((Region) table).prefWidth(-1) <= ((Region) table.getParent()).getWidth() + 1;
    }

    /** Scrolls the page once it is laid out. */
    static Parent scrolled(final Parent root, final double to) {
        root.lookupAll(".page-scroll").stream()
                .filter(ScrollPane.class::isInstance)
                .limit(1)
                .forEach(pane -> ((ScrollPane) pane).setVvalue(to));
        return root;
    }
}
