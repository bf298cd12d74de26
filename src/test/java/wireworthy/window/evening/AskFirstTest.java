package wireworthy.window.evening;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;

/** What can't be undone is asked before, at the lower end of a page, too. */
class AskFirstTest {
    private final FxRobot robot = new FxRobot();
    private final AtomicInteger done = new AtomicInteger();
    private Stage stage;

    @BeforeEach
    void aLongPageEndsWithIt() throws TimeoutException {
        stage = FxToolkit.registerPrimaryStage();
        robot.interact(
                () -> {
                    final Region above = new Region();
                    above.setMinHeight(560);
                    final AskFirst ask =
                            new AskFirst(
                                    "Delete",
                                    () -> "Delete them for good?",
                                    "Keep them",
                                    "Delete them",
                                    done::incrementAndGet);
                    stage.setScene(new Scene(new ScrollPane(new VBox(above, ask)), 600, 600));
                    stage.show();
                });
        press("Delete");
    }

    @AfterEach
    void close() {
        robot.interact(stage::close);
    }

    private void press(final String words) {
        robot.interact(button(words)::fire);
        robot.interact(() -> {});
        robot.sleep(200);
    }

    private Button button(final String words) {
        return robot.lookup((Node node) -> node instanceof Button it && it.getText().equals(words))
                .query();
    }

    @Test
    void nothingIsDoneAndTheKeyboardLiesOnWhatChangesNothing() {
        assertThat(done).hasValue(0);
        assertThat(button("Keep them").isFocused()).isTrue();
    }

    @Test
    void bothAnswersAreInSight() {
        assertThat(bottom(button("Delete them"))).isLessThanOrEqualTo(600);
    }

    private static double bottom(final Node node) {
        return node.localToScene(node.getLayoutBounds()).getMaxY();
    }

    @Test
    void itIsDoneOnlyWhenItIsSaidOnceMore() {
        press("Keep them");
        assertThat(done).hasValue(0);
        press("Delete");
        press("Delete them");
        assertThat(done).hasValue(1);
    }
}
