package wireworthy.window.figures;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import wireworthy.window.parts.Styles;

/** Three conductors cut across, to one scale, standing on a line; their figures under them. */
final class SectionToScaleDrawing extends Drawing {
    private static final int CONDUCTORS = 3;
    private static final double NAMES = 11;
    private static final double GROUND = 8.6;
    private static final double LARGEST = 8;
    private static final double ROW = 1.7;
    private static final double TABLE = GROUND + 0.6;

    /** From the right edge of a column to the middle of its figures. */
    private static final double HALF = 2.2;

    private final ObservableValue<SectionToScale.Shown> now;
    private final List<Circle> circles =
            Stream.generate(() -> add(new Circle(), Styles.COPPER_AREA)).limit(CONDUCTORS).toList();
    private final Line ground = line(Styles.HAIRLINE);
    private final Line millimetre = line(Styles.AXIS);
    private final Label millimetreWord = text(Styles.SMALL, Styles.SOFT);
    private final List<Row> rows;
    private final Label comparison = paragraph(Styles.STRONG);

    /** One figure of each conductor. */
    private final class Row {
        private final Label name = text(Styles.SOFT, Styles.SMALL);
        private final List<Label> figures;
        private final Function<SectionToScale.Conductor, String> figure;

        Row(
                final String said,
                final Function<SectionToScale.Conductor, String> figure,
                final String... styles) {
            this.figure = figure;
            name.setText(said);
            figures = Stream.generate(() -> text(styles)).limit(CONDUCTORS).toList();
        }

        void show(final List<SectionToScale.Conductor> conductors) {
            for (int i = 0; i < CONDUCTORS; i++) {
                figures.get(i).setText(figure.apply(conductors.get(i)));
            }
        }

        void draw(final double y, final double width) {
            put(name, Pos.TOP_LEFT, 0, y);
            for (int i = 0; i < CONDUCTORS; i++) {
                put(figures.get(i), Pos.TOP_RIGHT, right(i, width), y);
            }
        }
    }

    SectionToScaleDrawing(final ObservableValue<SectionToScale.Shown> now) {
        this.now = now;
        millimetreWord.setText("1 mm");
        rows =
                List.of(
                        new Row("", SectionToScale.Conductor::name, Styles.STRONG),
                        new Row("section", SectionToScale.Conductor::sectionText),
                        new Row("diameter", SectionToScale.Conductor::diameterText),
                        new Row("strands", SectionToScale.Conductor::strandsText),
                        new Row("next not thinner", SectionToScale.Conductor::next),
                        new Row("resistance", SectionToScale.Conductor::resistanceText));
        now.addListener((of, before, shown) -> show(shown));
        show(now.getValue());
    }

    private void show(final SectionToScale.Shown shown) {
        rows.forEach(row -> row.show(shown.conductors()));
        rows.get(3).name.setText("strands of " + shown.strandSize());
        comparison.setText(shown.comparison());
        requestLayout();
    }

    @Override
    double height(final double width) {
        return TABLE + rows.size() * ROW + 0.4 + high(comparison, width);
    }

    @Override
    void draw(final double width) {
        final double scale = LARGEST / now.getValue().mostDiameter();
        for (int i = 0; i < CONDUCTORS; i++) {
            final double radius = now.getValue().conductors().get(i).diameter() * scale / 2;
            final double middle = right(i, width) - HALF;
            circles.get(i).setCenterX(middle * em());
            circles.get(i).setCenterY((GROUND - radius) * em());
            circles.get(i).setRadius(radius * em());
        }
        lay(ground, NAMES - 1, GROUND, width, GROUND);
        lay(millimetre, 0, GROUND, scale * 1e-3, GROUND);
        put(millimetreWord, Pos.TOP_LEFT, 0, GROUND - 1.6);
        for (int i = 0; i < rows.size(); i++) {
            rows.get(i).draw(TABLE + i * ROW, width);
        }
        final double foot = TABLE + rows.size() * ROW + 0.4;
        lay(comparison, 0, foot, width, high(comparison, width));
    }

    /** The right edge of the figures of a conductor. */
    private static double right(final int conductor, final double width) {
        return NAMES + (conductor + 1) * (width - NAMES) / CONDUCTORS - HALF;
    }
}
