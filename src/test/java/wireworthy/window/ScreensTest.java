package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Group;
import javafx.scene.Parent;
import javafx.scene.Scene;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wireworthy.record.SettingsFile;
import wireworthy.record.SettingsKeeper;
import wireworthy.window.parts.Badge;
import wireworthy.window.parts.Buttons;
import wireworthy.window.parts.Cards;
import wireworthy.window.parts.Notice;
import wireworthy.window.parts.Pages;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;

/** The shell and its parts as pictures, and nothing of them cut off. */
@FxTest
class ScreensTest {
    private static final List<String> FIVE_PLACES =
            List.of("Lessons", "Practice", "Check my sums", "Evening class", "Tables");

    // Settings are written a little later, on a thread of their own.
    @TempDir(cleanup = CleanupMode.NEVER)
    private Path folder;

    @Test
    void theShellAndItsPartsAreRendered() {
        Screens.render("shell", this::shell);
        assertThat(Path.of("target/screens/shell-dark.png")).isNotEmptyFile();
    }

    @Test
    void theKeysAreRendered() {
        Screens.render("keys", () -> shell(MainWindow::help));
        assertThat(Path.of("target/screens/keys-dark.png")).isNotEmptyFile();
    }

    @ParameterizedTest
    @CsvSource({"1024, 700, 100", "1024, 700, 150", "1024, 700, 200", "800, 600, 200"})
    void nothingIsCutOff(final double width, final double height, final int textPerCent) {
        final Scene scene = new Scene(shell(), width, height);
        Looks.dress(scene, Theme.LIGHT, textPerCent);
        scene.snapshot(null);
        assertThat(Screens.cutOff(scene.getRoot())).isEmpty();
    }

    private Parent shell() {
        return shell(window -> window.go("Practice"));
    }

    private Parent shell(final Consumer<MainWindow> act) {
        final List<Place> places =
                FIVE_PLACES.stream().<Place>map(it -> new PartsPlace(it)).toList();
        final MainWindow window =
                new MainWindow(
                        places,
                        new SettingsKeeper(new SettingsFile(folder.resolve("settings.json"))),
                        Background.atOnce());
        window.open();
        act.accept(window);
        final Parent root = window.scene().getRoot();
        window.scene().setRoot(new Group());
        return root;
    }

    /** Every shared part on one page. */
    private record PartsPlace(String title) implements Place {
        @Override
        public String id() {
            return title;
        }

        @Override
        public Parent build(final Shell shell) {
            return Pages.page(
                    title,
                    Texts.title("Between floor and ceiling"),
                    Texts.paragraph(
                            "A fuse has a floor and a ceiling. The floor is the current of the"
                                    + " circuit with a quarter on top, so that it does not open for"
                                    + " nothing. 0.0172 Ω·mm²/m, ρ, ≤, µ, ×, ÷, √, Δ, ✓."),
                    new Notice(
                            Verdict.UNSOUND,
                            "0.526 V is what comes out when the cable is counted one way. The"
                                    + " current goes out along one core and comes back along the"
                                    + " other, so both carry it."),
                    new Notice(Verdict.SOUND, "14.8 m out and back."),
                    new Notice(Verdict.CAUTION, "Met only while the cable is cold."),
                    Cards.card(
                            Texts.subtitle("A card"),
                            new Badge(Verdict.SOUND, "out and back"),
                            new Badge(Verdict.UNSOUND, "here they part"),
                            new Badge(Verdict.CAUTION, "met only cold"),
                            Texts.soft("read as 0.526 volts"),
                            Buttons.row(
                                    Buttons.main("One like it, new numbers", () -> {}),
                                    Buttons.plain("Back to the lesson", () -> {}))));
        }
    }
}
