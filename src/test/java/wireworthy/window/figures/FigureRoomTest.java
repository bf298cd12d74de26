package wireworthy.window.figures;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.CheckBox;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wireworthy.lessons.FigureKind;
import wireworthy.window.FxTest;
import wireworthy.window.Screens;
import wireworthy.window.parts.Pages;

/** What lies under a figure stays where it is while the figure is moved to and fro. */
@FxTest
class FigureRoomTest {
    /** What is painted reaches a little beyond a part, or the whole card were painted under it. */
    private static final double BEYOND = 2;

    @ParameterizedTest
    @EnumSource(names = {"DERATED_AMPACITY", "BANK_BUILDER"})
    void aFigureFlippedBackKeepsItsRoom(final FigureKind kind) {
        final Scene scene = scene(kind);
        final CheckBox box = (CheckBox) scene.getRoot().lookup(".switch");
        flip(scene, box);
        final double there = drawing(scene).getHeight();
        flip(scene, box);
        assertThat(drawing(scene).getHeight()).isEqualTo(there);
        flip(scene, box);
        assertThat(drawing(scene).getHeight()).isEqualTo(there);
    }

    @Test
    void aFigureTakesNoMoreRoomThanItNeedsAtAnotherWidth() {
        final Scene narrow = scene(FigureKind.DERATED_AMPACITY);
        final Drawing drawing = drawing(narrow);
        final double before = drawing.prefHeight(500);
        assertThat(drawing.prefHeight(300)).isGreaterThan(before);
        assertThat(drawing.prefHeight(500)).isEqualTo(before);
    }

    @ParameterizedTest
    @EnumSource(FigureKind.class)
    void theGroundReachesBeyondAllThatIsPaintedAnew(final FigureKind kind) {
        final Scene scene = scene(kind);
        final Region ground = (Region) scene.getRoot().lookup(".figure-ground");
        final Bounds drawn = ground.getChildrenUnmodifiable().get(0).getBoundsInParent();
        assertThat(drawn.getMinX() - BEYOND).isGreaterThanOrEqualTo(-reach(ground));
    }

    /** Or the window were laid out and painted again and again while nobody touches it. */
    @ParameterizedTest
    @EnumSource(FigureKind.class)
    void aFigureLaidOutAsksForNothingMore(final FigureKind kind) {
        final Scene scene = scene(kind);
        scene.getRoot().layout();
        assertThat(scene.getRoot().lookupAll("*"))
                .filteredOn(node -> node instanceof Parent part && part.isNeedsLayout())
                .isEmpty();
    }

    private static double reach(final Region ground) {
        return -ground.getBackground().getFills().get(0).getInsets().getLeft();
    }

    private static void flip(final Scene scene, final CheckBox box) {
        box.fire();
        scene.getRoot().applyCss();
        scene.getRoot().layout();
    }

    private static Drawing drawing(final Scene scene) {
        return (Drawing)
                scene.getRoot().lookupAll("*").stream()
                        .filter(Drawing.class::isInstance)
                        .findFirst()
                        .orElseThrow();
    }

    private static Scene scene(final FigureKind kind) {
        final Node card = LiveFigures.of(BuiltInFigures.of(kind), BuiltInFigures.SOLVER);
        return Screens.scene(Pages.page("Figure", card), Screens.Setting.LIGHT);
    }
}
