package wireworthy.window.evening;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.control.RadioButton;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import wireworthy.record.SettingsFile;
import wireworthy.record.SettingsKeeper;
import wireworthy.record.SumsInUse;
import wireworthy.window.Accessibility;
import wireworthy.window.FxTest;
import wireworthy.window.Screens;
import wireworthy.working.Solver;

/** The parts at the projector and afterwards as pictures, and nothing of them cut off. */
@FxTest
class AfterScreensTest {
    @TempDir(cleanup = CleanupMode.NEVER)
    static Path folder;

    private static final Solver SOLVER = new Solver();

    @BeforeAll
    static void handIn() throws IOException {
        AfterModelTest.handIn(
                Files.createDirectories(folder.resolve("in")), AfterModelTest.sheet(30, 23));
        AfterModelTest.handIn(folder.resolve("in"), AfterModelTest.sheet(2, 2));
        Files.writeString(folder.resolve("in/notes.txt"), "bring the projector");
        Files.writeString(folder.resolve("in/cut.json"), "{\"wireworthy\":");
        Files.createDirectories(folder.resolve("none"));
    }

    private static EveningPlace place(final String from) {
        return EveningPlace.of(
                TestDesks.desk(folder.resolve("data"), folder.resolve(from)),
                new ProjectorDesk(SOLVER, () -> SumsInUse.USUAL),
                new SettingsKeeper(new SettingsFile(folder.resolve("settings.json"))));
    }

    static Stream<Arguments> screens() {
        return Stream.of(
                Arguments.of("after-begin", "in", "after", press()),
                Arguments.of("after-read", "in", "after", press("Choose a folder of hand-ins")),
                Arguments.of(
                        "after-delete",
                        "in",
                        "after",
                        press("Choose a folder of hand-ins", "Delete these hand-ins: 30")),
                Arguments.of("after-none", "none", "after", press("Choose a folder of hand-ins")),
                Arguments.of("projector-begin", "in", "projector", press()),
                Arguments.of("projector-skill", "in", "projector", press("A problem on a skill")),
                Arguments.of("projector-figures", "in", "projector", press("A live figure")));
    }

    private static Consumer<Parent> press(final String... buttons) {
        return root -> {
            for (final String button : buttons) {
                final Node found =
                        Stream.of(".button", ".radio-button")
                                .flatMap(kind -> root.lookupAll(kind).stream())
                                .filter(each -> button.equals(((Labeled) each).getText()))
                                .findFirst()
                                .orElseThrow(() -> new AssertionError("no " + button));
                if (found instanceof Button plain) {
                    plain.fire();
                } else {
                    ((RadioButton) found).fire();
                }
            }
        };
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("screens")
    void itIsRenderedInEverySettingWithNothingCutOff(
            final String name, final String from, final String part, final Consumer<Parent> act) {
        for (final Screens.Setting setting : Screens.Setting.values()) {
            final EveningPlace place = place(from);
            final Parent root = place.build(new NoShell());
            place.open(part);
            final Scene scene = Screens.scene(root, setting);
            act.accept(root);
            // A page arranges itself by the room it gets, and is ready in the second frame.
            scene.snapshot(null);
            scene.snapshot(null);
            Screens.write("evening-" + name, setting, scene);
            assertThat(Screens.cutOff(scene.getRoot())).as(setting.name()).isEmpty();
            assertThat(Accessibility.unlabelled(scene.getRoot())).isEmpty();
        }
    }
}
