package wireworthy.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.testfx.util.WaitForAsyncUtils;
import wireworthy.evening.Sheet;
import wireworthy.evening.Shelf;
import wireworthy.evening.wish.Wanted;
import wireworthy.evening.wish.Wish;
import wireworthy.record.SumsInUse;
import wireworthy.window.evening.EveningPlace;
import wireworthy.window.evening.ProjectorDesk;
import wireworthy.window.evening.TestDesks;
import wireworthy.working.Solver;

/** A borrowed laptop has a small screen: whoever types an answer sees where it goes. */
class SmallLaptopTest extends WindowTest {
    private static final Wish WISH =
            Wish.USUAL.withWanted(
                    Wanted.USUAL
                            .withOneByOne(true)
                            .withTemplates(
                                    List.of(
                                            "power/house-lamp-current",
                                            "power/amplifier-current-24",
                                            "power/water-pump-power")));

    private final Sheet sheet = WISH.sheet(Shelf.builtIn());

    @Override
    protected List<Place> places() {
        final Path stick = folder.resolve("stick");
        return List.of(
                EveningPlace.of(
                        TestDesks.desk(folder, stick),
                        new ProjectorDesk(new Solver(), () -> SumsInUse.USUAL),
                        settings));
    }

    private void size(final double width, final double height) {
        interact(
                () -> {
                    stage.setWidth(width);
                    stage.setHeight(height);
                });
    }

    private void press(final String text) {
        final Button button =
                lookup((Node it) -> it instanceof Button b && text.equals(b.getText()))
                        .queryAs(Button.class);
        interact(button::requestFocus);
        push(KeyCode.ENTER);
    }

    private TextField field() {
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(window.scene().getFocusOwner()).isInstanceOf(TextField.class);
        return (TextField) window.scene().getFocusOwner();
    }

    private static boolean inSight(final Node node) {
        for (Node it = node.getParent(); it != null; it = it.getParent()) {
            if (it instanceof ScrollPane pane) {
                final Bounds page = pane.localToScene(pane.getBoundsInLocal());
                return page.contains(node.localToScene(node.getBoundsInLocal()));
            }
        }
        return false;
    }

    @ParameterizedTest
    @CsvSource({"1024, 700, 2", "1280, 640, 3"})
    void theKeyboardIsInTheAnswerAndTheAnswerInSight(
            final double width, final double height, final int learner) {
        size(width, height);
        clickOn("At a laptop");
        final TextField mark =
                lookup((Node it) -> "By its mark".equals(it.getAccessibleText()))
                        .queryAs(TextField.class);
        interact(mark::requestFocus);
        write(sheet.mark()).push(KeyCode.ENTER);
        press(String.valueOf(learner));
        assertThat(field()).matches(SmallLaptopTest::inSight);
        for (int problem = 2; problem <= sheet.problems(); problem++) {
            write("1").push(KeyCode.ENTER);
            assertThat(field()).matches(SmallLaptopTest::inSight);
        }
    }
}
