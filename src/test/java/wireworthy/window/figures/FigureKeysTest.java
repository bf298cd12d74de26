package wireworthy.window.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.Slider;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.testfx.framework.junit5.ApplicationTest;
import org.testfx.util.WaitForAsyncUtils;
import wireworthy.lessons.Figure;
import wireworthy.lessons.FigureKind;
import wireworthy.window.Looks;
import wireworthy.window.Theme;
import wireworthy.window.parts.Pages;

/** Figures moved by keys alone. */
class FigureKeysTest extends ApplicationTest {
    private static final int MOST_TABS = 20;

    private Scene scene;

    @Override
    public void start(final Stage stage) {
        scene = new Scene(new StackPane(), 1024, 700);
        Looks.dress(scene, Theme.LIGHT, 100);
        stage.setScene(scene);
        stage.show();
    }

    private void shows(final Figure figure) {
        Platform.runLater(
                () ->
                        scene.setRoot(
                                Pages.page(
                                        "Figure", LiveFigures.of(figure, BuiltInFigures.SOLVER))));
        WaitForAsyncUtils.waitForFxEvents();
    }

    @Test
    void aTapIsSetAndThePictureSaysWhyNot() {
        shows(BuiltInFigures.kept(FigureKind.BANK_BUILDER));
        tabTo("take 12 V off one battery");
        push(KeyCode.SPACE);
        assertThat(verdicts()).first().asString().startsWith("never take 12 V off part of a 24 V");
        tabTo("in series, 2");
        push(KeyCode.RIGHT);
        assertThat(verdicts()).first().asString().contains("part of a 36 V string");
    }

    @Test
    void aLoadIsSwitchedOffAndTheDayIsCovered() {
        shows(BuiltInFigures.kept(FigureKind.DAYS_ENERGY));
        assertThat(verdicts()).first().asString().startsWith("short by 156 Wh");
        tabTo("house lamps, 6 × 9 W, 4 h a day");
        push(KeyCode.SPACE);
        assertThat(verdicts()).first().asString().startsWith("the day is covered, with 60 Wh");
    }

    @Test
    void aLongerCableLessCurrent() {
        shows(BuiltInFigures.kept(FigureKind.FUSE_OR_CABLE));
        tabTo("length one way, 5 m");
        push(KeyCode.END);
        assertThat(reads()).contains("short circuit 55.45 A");
    }

    @ParameterizedTest
    @EnumSource(FigureKind.class)
    void everyHandleAndSwitchIsReachedByTab(final FigureKind kind) {
        shows(BuiltInFigures.of(kind));
        final List<Node> reached = new ArrayList<>();
        for (int i = 0; i < MOST_TABS; i++) {
            push(KeyCode.TAB);
            reached.add(scene.getFocusOwner());
        }
        assertThat(reached).containsAll(movable());
    }

    private Set<Node> movable() {
        return lookup(node -> shown(node) && (node instanceof Slider || node instanceof CheckBox))
                .queryAll();
    }

    /** What is held has no handle to be seen. */
    private static boolean shown(final Node node) {
        return node.isVisible() && (node.getParent() == null || shown(node.getParent()));
    }

    private void tabTo(final String name) {
        for (int i = 0; i < MOST_TABS; i++) {
            push(KeyCode.TAB);
            if (name(scene.getFocusOwner()).startsWith(name)) {
                return;
            }
        }
        throw new AssertionError("No way by Tab to " + name);
    }

    private static String name(final Node node) {
        return node instanceof Labeled labeled
                ? labeled.getText().replace('\u00a0', ' ')
                : String.valueOf(node.getAccessibleText());
    }

    private List<String> verdicts() {
        return lookup(".verdict").<Labeled>queryAll().stream().map(FigureKeysTest::name).toList();
    }

    private List<String> reads() {
        return lookup(".label").<Labeled>queryAll().stream().map(Labeled::getText).toList();
    }
}
