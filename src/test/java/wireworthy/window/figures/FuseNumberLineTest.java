package wireworthy.window.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Line;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wireworthy.window.FxTest;
import wireworthy.window.Screens;
import wireworthy.window.parts.Styles;

/** The number line of a fuse beside a form: what stands where, and that no colour says it alone. */
@FxTest
class FuseNumberLineTest {
    private static final List<Double> STRIP =
            List.of(40.0, 60.0, 80.0, 100.0, 125.0, 150.0, 175.0, 200.0, 300.0, 500.0);
    private static final List<Double> BLADE =
            List.of(1.0, 2.0, 3.0, 4.0, 5.0, 7.5, 10.0, 15.0, 20.0, 25.0, 30.0, 35.0, 40.0);
    private static final double FLOOR = 82.83;
    private static final double CEILING = 160;

    private static FuseNumberLine line(final double wide, final OptionalDouble yours) {
        return line(wide, FLOOR, CEILING, STRIP, yours);
    }

    private static FuseNumberLine line(
            final double wide,
            final double floor,
            final double ceiling,
            final List<Double> ratings,
            final OptionalDouble yours) {
        final FuseNumberLine line =
                new FuseNumberLine(
                        floor,
                        ceiling,
                        ratings,
                        ratings.stream().filter(it -> it >= floor && it <= ceiling).toList(),
                        yours,
                        "below, it opens without a fault",
                        "what the cable can carry");
        line.setMaxWidth(wide);
        Screens.scene(new VBox(line), Screens.Setting.LIGHT);
        return line;
    }

    private static Stream<Label> labels(final FuseNumberLine in) {
        return in.lookupAll(".label").stream()
                .filter(Node::isVisible)
                .filter(Label.class::isInstance)
                .map(Label.class::cast);
    }

    private static Bounds label(final FuseNumberLine in, final String text) {
        return labels(in)
                .filter(each -> each.getText().equals(text))
                .findFirst()
                .orElseThrow()
                .getBoundsInParent();
    }

    /** Where the lines of a style stand, from left to right. */
    private static List<Double> lines(final FuseNumberLine in, final String style) {
        return in.lookupAll("." + style).stream()
                .map(Line.class::cast)
                .filter(each -> each.isVisible() && each.getStartX() == each.getEndX())
                .map(Line::getStartX)
                .distinct()
                .sorted()
                .toList();
    }

    @ParameterizedTest
    @CsvSource({"125, 4", "200, 7", "500, 9"})
    void aNumberStandsUnderItsTick(final String number, final int tick) {
        final FuseNumberLine line = line(530, OptionalDouble.of(125));
        assertThat(label(line, number).getCenterX())
                .isCloseTo(lines(line, Styles.AXIS).get(tick), within(1.0));
    }

    @Test
    void whatIsAboveTheCeilingHasItsSignToo() {
        final FuseNumberLine line = line(530, OptionalDouble.empty());
        final long numbers =
                labels(line)
                        .filter(each -> each.getText().matches("\\d+"))
                        .filter(each -> Double.parseDouble(each.getText()) > FLOOR)
                        .count();
        assertThat(labels(line).filter(each -> each.getText().matches("[✓✗]")))
                .hasSize((int) numbers);
    }

    /** Hatched in red, however narrow it is. */
    @ParameterizedTest
    @ValueSource(doubles = {280, 300, 330, 360, 400, 450, 500})
    void whatIsTooLargeHasASignWhereverItIsDrawn(final double wide) {
        for (final double ceiling : new double[] {29, 33, 36, 39}) {
            final FuseNumberLine line = line(wide, 7.5, ceiling, BLADE, OptionalDouble.of(10));
            assertThat(labels(line).map(Label::getText))
                    .as("%s A in %s", ceiling, wide)
                    .anyMatch(text -> text.contains("✗"));
        }
    }

    @Test
    void theFuseThatWasChosenIsNamedUnderItsNumber() {
        final FuseNumberLine line = line(530, OptionalDouble.of(125));
        assertThat(label(line, "yours").getCenterX())
                .isCloseTo(label(line, "125").getCenterX(), within(1.0));
    }

    @Test
    void oneThatNoSeriesHasIsNamedWithItsAmps() {
        final FuseNumberLine line = line(530, OptionalDouble.of(110));
        assertThat(label(line, "yours, 110 A")).isNotNull();
        assertThat(labels(line(530, OptionalDouble.empty())).map(Label::getText))
                .noneMatch(text -> text.contains("yours"));
    }

    /** Wherever there is room on one side of its line, the words end or begin at it. */
    @ParameterizedTest
    @ValueSource(doubles = {300, 420, 530, 700})
    void theWordsOfTheFloorStandAtItsLine(final double wide) {
        final FuseNumberLine line = line(wide, OptionalDouble.empty());
        final double mark = lines(line, Styles.MARK).get(0);
        final Bounds floor = label(line, "floor 82.83 A");
        final double aside =
                Math.min(Math.abs(floor.getMinX() - mark), Math.abs(floor.getMaxX() - mark));
        assertThat(aside).isLessThan(10);
    }
}
