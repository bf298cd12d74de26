package wireworthy.window.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Slider;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wireworthy.lessons.FigureKind;
import wireworthy.window.FxTest;
import wireworthy.window.Screens;

/** Everything that moves in a figure moves by keys, and the figure says so. */
@FxTest
class CableFigureKeysTest {
    @ParameterizedTest
    @EnumSource(names = {"WHERE_THE_CABLE_THINS", "FOUR_WAYS", "DERATED_AMPACITY"})
    void anArrowKeyMovesASliderByOneStopAndTheFigureSaysOtherwise(final FigureKind kind) {
        final Scene scene = scene(kind);
        final Slider slider = (Slider) scene.getRoot().lookup(".slider");
        final String before = said(scene);
        final String named = slider.getAccessibleText();
        final double value = slider.getValue();
        press(slider, KeyCode.RIGHT);
        assertThat(slider.getValue()).isEqualTo(value + 1);
        assertThat(slider.getAccessibleText()).isNotEqualTo(named);
        assertThat(said(scene)).isNotEqualTo(before);
    }

    @Test
    void theSpaceBarFitsTheSecondFuse() {
        final Scene scene = scene(FigureKind.WHERE_THE_CABLE_THINS);
        assertThat(said(scene)).startsWith("Fire");
        final CheckBox box = (CheckBox) scene.getRoot().lookup(".switch");
        press(box, KeyCode.SPACE);
        assertThat(box.isSelected()).isTrue();
        assertThat(said(scene)).contains("The fuse where the cable thins: 7.5");
    }

    private static Scene scene(final FigureKind kind) {
        return Screens.scene(
                new StackPane(LiveFigures.of(BuiltInFigures.kept(kind), BuiltInFigures.SOLVER)),
                Screens.Setting.LIGHT);
    }

    private static String said(final Scene scene) {
        return drawing(scene.getRoot());
    }

    private static String drawing(final Node root) {
        if (root instanceof Drawing drawing) {
            return drawing.getAccessibleText();
        }
        return ((Parent) root)
                .getChildrenUnmodifiable().stream()
                        .filter(Parent.class::isInstance)
                        .map(CableFigureKeysTest::drawing)
                        .filter(text -> !text.isEmpty())
                        .findFirst()
                        .orElse("");
    }

    private static void press(final Node node, final KeyCode code) {
        node.requestFocus();
        for (final var type : List.of(KeyEvent.KEY_PRESSED, KeyEvent.KEY_RELEASED)) {
            Event.fireEvent(node, new KeyEvent(type, "", "", code, false, false, false, false));
        }
    }
}
