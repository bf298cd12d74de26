package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.function.UnaryOperator;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.RadioButton;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import wireworthy.record.Craft;
import wireworthy.record.Region;
import wireworthy.record.SettingsFile;
import wireworthy.record.SettingsKeeper;
import wireworthy.record.SumsInUse;
import wireworthy.record.WireSizes;

/** The page of the sums in use, at the first start and later. */
class SumsPlaceTest extends WindowTest {
    private static final int MOST_KEYS = 30;

    @Override
    protected List<Place> places() {
        return List.of(new TestPlace("Hall"), new TestPlace("Stalls"));
    }

    @AfterEach
    void forget() throws IOException {
        settings.close();
        Files.deleteIfExists(folder.resolve("settings.json"));
    }

    private void firstStart() {
        interact(window::start);
    }

    @Test
    void atTheFirstStartEnterGoesOnWithWhatIsUsual() {
        firstStart();
        assertThat(reads("Before the first sum")).isTrue();
        assertThat(settings.now().chosen()).isEmpty();
        push(KeyCode.ENTER);
        assertThat(reads("The place Hall")).isTrue();
        assertThat(settings.now().chosen()).contains(SumsInUse.USUAL);
    }

    @Test
    void atTheFirstStartEnterGoesOnFromEveryChoice() {
        firstStart();
        pick("Where", "Britain and Ireland");
        push(KeyCode.ENTER);
        assertThat(reads("The place Hall")).isTrue();
    }

    @Test
    void aTerminalLeavesItToo() {
        firstStart();
        push(KeyCode.SHORTCUT, KeyCode.DIGIT2);
        assertThat(reads("The place Stalls")).isTrue();
        assertThat(settings.now().chosen()).contains(SumsInUse.USUAL);
    }

    @Test
    void atTheNextStartItIsNotAskedAgain() {
        firstStart();
        push(KeyCode.ENTER);
        firstStart();
        assertThat(reads("The place Hall")).isTrue();
    }

    @Test
    void whatIsPickedByKeyboardDecidesTableAndLimit() {
        firstStart();
        pick("What is fitted out", "Boat");
        assertThat(settings.now().sums().cableTable()).isEqualTo("iso-10133");
        pick("Where", "United States and Canada");
        assertThat(settings.now().sums().cableTable()).isEqualTo("boat-cable");
        pick("What is fitted out", "Van or truck");
        pick("Where", "Australia and New Zealand");
        assertThat(settings.now().sums().dropLimit()).isEqualTo(0.05);
        pick("How cable is sold there", "By gauge, AWG");
        assertThat(settings.now().sums())
                .isEqualTo(SumsInUse.usual(Craft.VAN, Region.AUSTRALIA, WireSizes.AWG));
    }

    @Test
    void tableLimitAndMarginCanBeSetOneByOneAtAnyTime() {
        interact(() -> settings.change(it -> it.withSums(SumsInUse.USUAL)));
        clickOn("View").clickOn("Your sums");
        pick("Margin: fuse floor over circuit current", "1.5");
        pick("Drop limit, out and back together", "4 %");
        assertThat(reads("In use: " + SumsTexts.all(settings.now().sums()))).isTrue();
        assertThat(settings.now().sums())
                .isEqualTo(SumsInUse.USUAL.withMargin(1.5).withDropLimit(0.04));
    }

    @Test
    void everyControlHasAName() {
        firstStart();
        assertThat(Accessibility.unlabelled(window.scene().getRoot())).isEmpty();
    }

    @Test
    void itLooksWellInEverySetting() {
        interact(
                () -> {
                    Screens.render("sums-first", () -> page(MainWindow::start));
                    Screens.render("sums-lower", () -> lower(page(MainWindow::start)));
                    for (final Screens.Setting setting : Screens.Setting.values()) {
                        final Scene scene = Screens.scene(page(MainWindow::start), setting);
                        assertThat(Screens.cutOff(scene.getRoot())).as("%s", setting).isEmpty();
                        assertThat(bottomOfTheWayOn(scene))
                                .as("%s: Begin is in sight", setting)
                                .isLessThanOrEqualTo(scene.getHeight());
                    }
                });
    }

    private static double bottomOfTheWayOn(final Scene scene) {
        return scene.getRoot().lookupAll(".button").stream()
                .filter(node -> node instanceof Button button && button.getText().equals("Begin"))
                .mapToDouble(node -> node.localToScene(node.getLayoutBounds()).getMaxY())
                .findFirst()
                .orElseThrow();
    }

    private Parent page(final UnaryOperator<MainWindow> begun) {
        final SettingsKeeper fresh =
                new SettingsKeeper(new SettingsFile(folder.resolve("none.json")));
        final List<Place> all =
                List.of(
                        new TestPlace("Lessons"),
                        new TestPlace("Practice"),
                        new TestPlace("Tables"));
        final Scene scene = begun.apply(new MainWindow(all, fresh, Background.atOnce())).scene();
        final Parent root = scene.getRoot();
        scene.setRoot(new Group());
        return root;
    }

    private static Parent lower(final Parent root) {
        ReadingScreensTest.scrolled(root, 1);
        return root;
    }

    /** Goes to the row with Tab and along it with the arrow keys. */
    private void pick(final String row, final String value) {
        keyTo(KeyCode.TAB, row + ": ");
        for (int i = 0; i < MOST_KEYS && !focused().endsWith(": " + value); i++) {
            push(KeyCode.RIGHT);
        }
        for (int i = 0; i < MOST_KEYS && !focused().endsWith(": " + value); i++) {
            push(KeyCode.LEFT);
        }
        assertThat(focused()).isEqualTo(row + ": " + value);
    }

    private void keyTo(final KeyCode key, final String beginning) {
        for (int i = 0; i < MOST_KEYS && !focused().startsWith(beginning); i++) {
            push(key);
        }
        assertThat(focused()).startsWith(beginning);
    }

    private String focused() {
        final Node focused = window.scene().getFocusOwner();
        return focused instanceof RadioButton ? focused.getAccessibleText() : "";
    }
}
