package wireworthy.window.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import javafx.geometry.Bounds;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import wireworthy.window.FxTest;
import wireworthy.window.parts.DistributionDrawing.Branch;

/** The drawing of how circuits branch off, read as symbols are read. */
@FxTest
class DistributionDrawingTest {
    private static final Branch DESK = new Branch(0, true, false, "Desk", "15 A", "2.5 mm², 4 m");

    private static DistributionDrawing drawing(final Branch... branches) {
        final DistributionDrawing drawing =
                new DistributionDrawing("12 V", "125 A, 35 mm²", List.of(branches));
        new Scene(new Group(drawing));
        return drawing;
    }

    private static <T extends Node> Stream<T> all(final DistributionDrawing in, final Class<T> of) {
        return in.getChildren().stream()
                .filter(Group.class::isInstance)
                .flatMap(each -> ((Group) each).getChildren().stream())
                .filter(of::isInstance)
                .map(of::cast);
    }

    private static Stream<Line> crosses(final DistributionDrawing in) {
        return all(in, Line.class).filter(it -> it.getStyleClass().contains(Styles.CROSS));
    }

    private static Stream<String> words(final DistributionDrawing in) {
        return all(in, Text.class).map(Text::getText);
    }

    @Test
    void theMainFuseHangsOnTheLongPlateWhichIsThePositivePole() {
        final List<Line> plates =
                all(drawing(DESK), Line.class)
                        .filter(it -> it.getStartY() == it.getEndY())
                        .sorted(Comparator.comparingDouble(Line::getStartY))
                        .limit(4)
                        .toList();
        assertThat(plates.get(3).getEndX() - plates.get(3).getStartX())
                .isGreaterThan(plates.get(2).getEndX() - plates.get(2).getStartX());
    }

    @Test
    void everyFuseHasItsConductorRunningThrough() {
        final DistributionDrawing drawing = drawing(DESK);
        final List<Rectangle> boxes = all(drawing, Rectangle.class).toList();
        assertThat(boxes).hasSize(2);
        for (final Rectangle box : boxes) {
            assertThat(all(drawing, Line.class).filter(it -> endToEnd(it, box))).hasSize(1);
        }
    }

    private static boolean endToEnd(final Line line, final Rectangle box) {
        final Bounds inside = box.getLayoutBounds();
        final double longer = Math.max(box.getWidth(), box.getHeight());
        final double length =
                Math.hypot(line.getEndX() - line.getStartX(), line.getEndY() - line.getStartY());
        final double x = (line.getStartX() + line.getEndX()) / 2;
        final double y = (line.getStartY() + line.getEndY()) / 2;
        return Math.abs(length - longer) < 0.01 && inside.contains(x, y);
    }

    @Test
    void aTapThatCouldStartAFireForWantOfAFuseIsMarkedByACrossAndByWords() {
        final Branch fan = new Branch(1, false, true, "Fan", "", "0.5 mm², 2.5 m");
        final DistributionDrawing drawing = drawing(DESK, fan);
        assertThat(crosses(drawing)).hasSize(2);
        assertThat(words(drawing)).contains("no fuse");
        assertThat(drawing.getAccessibleText()).contains("which could start a fire");
    }

    @Test
    void aTapThatIsSafeWithoutOneIsNot() {
        final Branch lamp = new Branch(1, false, false, "Lamp", "", "2.5 mm², 1 m");
        final DistributionDrawing drawing = drawing(DESK, lamp);
        assertThat(crosses(drawing)).isEmpty();
        assertThat(words(drawing)).doesNotContain("no fuse");
    }
}
