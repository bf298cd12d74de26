package wireworthy.window.evening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import wireworthy.evening.Pick;
import wireworthy.evening.Sheet;
import wireworthy.evening.SheetPlan;
import wireworthy.evening.Shelf;
import wireworthy.window.Looks;
import wireworthy.window.Theme;
import wireworthy.window.parts.Scrolling;

/** On a small screen a learner sees what is next to be pressed, and what was said. */
class LaptopInSightTest {
    private static final Sheet SHEET =
            Sheet.of(
                    new SheetPlan(
                            new Pick.ByTemplates(
                                    Collections.nCopies(8, "power/house-lamp-current")),
                            true,
                            3,
                            false,
                            5),
                    Shelf.builtIn());

    private final FxRobot robot = new FxRobot();
    private Stage stage;
    private LaptopPart part;

    @TempDir Path folder;

    @BeforeEach
    void aSmallScreen() throws TimeoutException {
        stage = FxToolkit.registerPrimaryStage();
        part = new LaptopPart(TestDesks.desk(folder, folder));
        robot.interact(
                () -> {
                    // What is left of 1024 x 700 beside the parts and under the places.
                    final Scene scene = new Scene(part.build(new NoShell()), 810, 600);
                    Looks.dress(scene, Theme.LIGHT, 100);
                    stage.setScene(scene);
                    stage.show();
                });
        settle();
    }

    @AfterEach
    void close() {
        robot.interact(stage::close);
    }

    private void settle() {
        robot.interact(() -> {});
        robot.sleep(300);
    }

    private void press(final String words) {
        robot.interact(((ButtonBase) found(words))::fire);
        settle();
    }

    private Node found(final String words) {
        return robot.lookup(
                        (Node node) ->
                                node instanceof Labeled it
                                        && it.getText() != null
                                        && it.getText().startsWith(words))
                .query();
    }

    private boolean inSight(final Node node) {
        final double top = node.localToScene(node.getLayoutBounds()).getMinY();
        final double bottom = node.localToScene(node.getLayoutBounds()).getMaxY();
        return top >= 0 && bottom <= stage.getScene().getHeight();
    }

    private void begin() {
        robot.interact(() -> part.model().openMark(SHEET.mark()));
        settle();
        press("1");
    }

    private TextField field() {
        return robot.lookup((Node node) -> node instanceof TextField).query();
    }

    @Test
    void theButtonThatKeepsIsInSightWithTheField() {
        begin();
        assertThat(inSight(found("Keep and go on"))).isTrue();
        assertThat(inSight(field())).isTrue();
    }

    @Test
    void aWrongMarkStaysInSightWithWhatIsSaidOfIt() {
        robot.interact(() -> field().setText("0000-1111"));
        press("Open this sheet");
        assertThat(part.model().trouble().get()).isNotEmpty();
        assertThat(inSight(field())).isTrue();
        assertThat(inSight(found(part.model().trouble().get().substring(0, 15)))).isTrue();
    }

    @Test
    void whatWasRightOpensWithTheFirstMarkInSight() {
        begin();
        final LaptopModel.Working working = (LaptopModel.Working) part.model().stage().get();
        working.work().keep(1, List.of("334 A"));
        robot.interact(() -> part.model().handIn(working.work(), folder));
        settle();
        press("See what is right");
        assertThat(inSight(robot.lookup(".notice").query())).isTrue();
    }

    @Test
    void tickingToHaveItExplainedMovesNothing() {
        begin();
        press("Keep and go on");
        final CheckBox box = (CheckBox) found("I would like");
        robot.interact(() -> Scrolling.into(box));
        settle();
        final double before = box.localToScene(0, 0).getY();
        robot.interact(box::fire);
        settle();
        assertThat(box.localToScene(0, 0).getY()).isCloseTo(before, within(1.0));
    }
}
