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
    private static final double LARGEST = 8;
    private static final double ROW = 1.7;
    private static final double LINE = 1.4;

    /** Narrower than this, a name stands over its figures, not beside them. */
    private static final double ROOM_FOR_NAMES = 30;

    /** From the middle of a conductor to the right edge of its figures. */
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
            final double under = narrow(width) && !name.getText().isEmpty() ? LINE : 0;
            for (int i = 0; i < CONDUCTORS; i++) {
                put(figures.get(i), Pos.TOP_RIGHT, middle(i, width) + HALF, y + under);
            }
        }
    }

    SectionToScaleDrawing(final ObservableValue<SectionToScale.Shown> now) {
        this.now = now;
        millimetreWord.setText(FigureTexts.of("scale.millimetre"));
        rows =
                List.of(
                        new Row("", SectionToScale.Conductor::name, Styles.STRONG),
                        new Row(FigureTexts.of("section"), SectionToScale.Conductor::sectionText),
                        new Row(
                                FigureTexts.of("scale.diameter"),
                                SectionToScale.Conductor::diameterText),
                        new Row(
                                FigureTexts.of("scale.strands"),
                                SectionToScale.Conductor::strandsText),
                        new Row(FigureTexts.of("scale.next"), SectionToScale.Conductor::next),
                        new Row(
                                FigureTexts.of("scale.resistance"),
                                SectionToScale.Conductor::resistanceText));
        now.addListener((of, before, shown) -> show(shown));
        show(now.getValue());
    }

    private void show(final SectionToScale.Shown shown) {
        rows.forEach(row -> row.show(shown.conductors()));
        rows.get(3).name.setText(FigureTexts.of("scale.strands.of", "size", shown.strandSize()));
        comparison.setText(shown.comparison());
        requestLayout();
    }

    @Override
    double height(final double width) {
        return foot(width) + high(comparison, width);
    }

    @Override
    void draw(final double width) {
        final double largest = Math.min(LARGEST, column(width) - 0.4);
        final double scale = largest / now.getValue().mostDiameter();
        final double floor = ground(width);
        for (int i = 0; i < CONDUCTORS; i++) {
            final double radius = now.getValue().conductors().get(i).diameter() * scale / 2;
            circles.get(i).setCenterX(middle(i, width) * em());
            circles.get(i).setCenterY((floor - radius) * em());
            circles.get(i).setRadius(radius * em());
        }
        lay(ground, Math.max(0, names(width) - 1), floor, width, floor);
        final double mark = narrow(width) ? 1.6 : floor;
        lay(millimetre, 0, mark, scale * 1e-3, mark);
        put(millimetreWord, Pos.TOP_LEFT, 0, mark - 1.6);
        for (int i = 0; i < rows.size(); i++) {
            rows.get(i).draw(floor + 0.6 + i * row(width), width);
        }
        lay(comparison, 0, foot(width), width, high(comparison, width));
    }

    private static boolean narrow(final double width) {
        return width < ROOM_FOR_NAMES;
    }

    private static double names(final double width) {
        return narrow(width) ? 0 : NAMES;
    }

    private static double ground(final double width) {
        return LARGEST + (narrow(width) ? 2.6 : 0.6);
    }

    private static double row(final double width) {
        return narrow(width) ? ROW + LINE : ROW;
    }

    private double foot(final double width) {
        return ground(width) + 1 + rows.size() * row(width);
    }

    private static double column(final double width) {
        return (width - names(width)) / CONDUCTORS;
    }

    /** The middle of a conductor and of its figures. */
    private static double middle(final int conductor, final double width) {
        return names(width) + (conductor + 0.5) * column(width);
    }
}
