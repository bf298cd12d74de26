package wireworthy.window.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.shape.Line;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wireworthy.practice.Banks;
import wireworthy.practice.CircuitLabels;
import wireworthy.practice.Draw;
import wireworthy.practice.Exercise;
import wireworthy.window.FxTest;
import wireworthy.window.Screens;
import wireworthy.working.Solver;

/** The drawn circuit: its labels keep clear of its symbols, and it shows as many as there are. */
@FxTest
class CircuitDrawingTest {
    @ParameterizedTest
    @ValueSource(strings = {"12 V", "12.3 V", "12.85 V", "51.2 V"})
    void theVoltsKeepClearOfTheBattery(final String supply) {
        final CircuitDrawing drawing =
                laidOut(new CircuitDrawing.Labels(supply, "1.5 mm²", "5 m", "24 W", List.of()));

        final Bounds label = text(drawing, supply).orElseThrow();
        assertThat(all(drawing, Line.class).map(Node::getBoundsInParent))
                .noneMatch(label::intersects);
        assertThat(label.getMinX()).isNotNegative();
    }

    @Test
    void loadsOfOneKindAreCountedAtTheirLabel() {
        assertThat(labels("parallel-loads", "house-lamps-of-one-kind").taken())
                .matches("\\d+ × [\\d.]+ W");
    }

    @Test
    void loadsSideBySideAreDrawnEachWithItsCount() {
        final List<String> beside = labels("parallel-loads", "lamps-and-pump").beside();
        assertThat(beside).hasSize(2);
        assertThat(beside.get(0)).matches("×\\d+");
        assertThat(beside.get(1)).isEmpty();

        final CircuitDrawing drawing =
                laidOut(new CircuitDrawing.Labels("12 V", "", "", "", List.of("×6", "", "×3")));
        assertThat(text(drawing, "×6")).isPresent();
        assertThat(text(drawing, "×3").orElseThrow().getMaxX())
                .isLessThanOrEqualTo(drawing.getWidth());
        assertThat(drawing.getAccessibleText()).contains("(×6, ×1, ×3)");
    }

    private static CircuitLabels labels(final String bank, final String template) {
        final Exercise exercise =
                new Draw(new Solver())
                        .exercise(Banks.read(List.of()).template(bank, template).orElseThrow(), 1);
        return CircuitLabels.of(exercise);
    }

    private static CircuitDrawing laidOut(final CircuitDrawing.Labels labels) {
        final CircuitDrawing drawing = new CircuitDrawing(CircuitDrawing.Load.SEVERAL, labels);
        final Scene scene = Screens.scene(new Group(drawing), Screens.Setting.LIGHT);
        Screens.write("circuit-drawing-" + labels.beside().size(), Screens.Setting.LIGHT, scene);
        return drawing;
    }

    private static Optional<Bounds> text(final CircuitDrawing drawing, final String words) {
        return all(drawing, Text.class)
                .filter(it -> it.getText().equals(words))
                .map(Node::getBoundsInParent)
                .findFirst();
    }

    /** The parts drawn, in the measures of the drawing. */
    private static <T extends Node> java.util.stream.Stream<T> all(
            final CircuitDrawing drawing, final Class<T> kind) {
        return drawing.getChildren().stream()
                .filter(Group.class::isInstance)
                .flatMap(it -> ((Group) it).getChildren().stream())
                .filter(kind::isInstance)
                .map(kind::cast);
    }
}
