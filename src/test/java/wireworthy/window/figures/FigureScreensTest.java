package wireworthy.window.figures;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Slider;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.StackPane;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wireworthy.lessons.FigureKind;
import wireworthy.window.Accessibility;
import wireworthy.window.FxTest;
import wireworthy.window.Screens;
import wireworthy.window.parts.Pages;

/** Each figure as a picture, nothing of it cut off, everything in it named. */
@FxTest
class FigureScreensTest {
    @ParameterizedTest
    @EnumSource(FigureKind.class)
    void isRendered(final FigureKind kind) {
        Screens.render("figure-" + kind.id(), () -> page(kind, 0, false));
        Screens.render("figure-" + kind.id() + "-far", () -> page(kind, 1, true));
    }

    @ParameterizedTest
    @EnumSource(FigureKind.class)
    void isNotCutOffWithLargeText(final FigureKind kind) {
        final Scene scene = Screens.scene(page(kind, 0, true), Screens.Setting.LARGE);
        assertThat(Screens.cutOff(scene.getRoot())).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(FigureKind.class)
    void hasANameForEverythingReachable(final FigureKind kind) {
        final Scene scene = Screens.scene(page(kind, 0, true), Screens.Setting.LIGHT);
        assertThat(Accessibility.unlabelled(scene.getRoot())).isEmpty();
    }

    /** A page with the figure, its sliders moved towards their far end. */
    private static Parent page(final FigureKind kind, final double far, final boolean inWords) {
        final ScrollPane page =
                Pages.page(
                        "Figure", LiveFigures.of(BuiltInFigures.of(kind), BuiltInFigures.SOLVER));
        page.getContent().lookupAll("Slider").forEach(node -> move((Slider) node, far));
        page.getContent()
                .lookupAll(".in-words")
                .forEach(node -> ((ToggleButton) node).setSelected(inWords));
        return new StackPane(page);
    }

    private static void move(final Slider slider, final double far) {
        slider.setValue(slider.getValue() + far * 0.6 * (slider.getMax() - slider.getValue()));
    }
}
