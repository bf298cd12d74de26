package wireworthy.window.parts;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
import javafx.scene.text.Text;

/** Circuit symbols as IEC 60617 draws them, about a point, in units of the given size. */
final class Symbols {
    private Symbols() {}

    /** A battery of two cells, its positive pole, the longer plate, above. */
    static List<Node> battery(final double x, final double y, final double em) {
        return battery(x, y, em, -em);
    }

    /** The same with its positive pole below, for what is fed downwards. */
    static List<Node> batteryFeedingDown(final double x, final double y, final double em) {
        return battery(x, y, em, em);
    }

    private static List<Node> battery(
            final double x, final double y, final double em, final double plus) {
        return List.of(
                symbol(new Line(x - em, y + 0.9 * plus, x + em, y + 0.9 * plus)),
                heavy(new Line(x - 0.5 * em, y + 0.35 * plus, x + 0.5 * em, y + 0.35 * plus)),
                symbol(new Line(x - em, y - 0.35 * plus, x + em, y - 0.35 * plus)),
                heavy(new Line(x - 0.5 * em, y - 0.9 * plus, x + 0.5 * em, y - 0.9 * plus)));
    }

    /** A fuse: a box with the conductor running through it. */
    static List<Node> fuse(final double x, final double y, final double em) {
        return List.of(
                box(x - 1.2 * em, y - 0.5 * em, 2.4 * em, em),
                symbol(new Line(x - 1.2 * em, y, x + 1.2 * em, y)));
    }

    /** A fuse standing. */
    static List<Node> standingFuse(final double x, final double y, final double em) {
        return List.of(
                box(x - 0.5 * em, y - 1.2 * em, em, 2.4 * em),
                symbol(new Line(x, y - 1.2 * em, x, y + 1.2 * em)));
    }

    /** A cross where a fuse is missing. */
    static List<Node> missing(final double x, final double y, final double em) {
        final double h = 0.45 * em;
        return List.of(
                cross(new Line(x - h, y - h, x + h, y + h)),
                cross(new Line(x - h, y + h, x + h, y - h)));
    }

    /** A lamp: a circle with a cross. */
    static List<Node> lamp(final double x, final double y, final double em) {
        final double r = 1.1 * em;
        final double d = r * Math.sqrt(0.5);
        return List.of(
                round(x, y, r),
                symbol(new Line(x - d, y - d, x + d, y + d)),
                symbol(new Line(x - d, y + d, x + d, y - d)));
    }

    /** A motor: a circle with an M. */
    static List<Node> motor(final double x, final double y, final double em) {
        return List.of(round(x, y, 1.1 * em), letter("M", x, y, em));
    }

    /** A load with resistance, such as a heater: a box. */
    static List<Node> resistance(final double x, final double y, final double em) {
        return List.of(box(x - 0.5 * em, y - 1.2 * em, em, 2.4 * em));
    }

    /** A load of any kind, lying: a box. */
    static List<Node> load(final double x, final double y, final double em) {
        return List.of(box(x - 0.8 * em, y - 0.35 * em, 1.6 * em, 0.7 * em));
    }

    /** A converter: a square with a diagonal. */
    static List<Node> converter(final double x, final double y, final double em) {
        final double h = 1.1 * em;
        return List.of(
                box(x - h, y - h, 2 * h, 2 * h), symbol(new Line(x - h, y + h, x + h, y - h)));
    }

    private static Shape box(final double x, final double y, final double w, final double h) {
        return filled(new Rectangle(x, y, w, h));
    }

    private static Shape round(final double x, final double y, final double r) {
        return filled(new Circle(x, y, r));
    }

    private static Node letter(final String letter, final double x, final double y, double em) {
        final Text text = new Text(letter);
        text.getStyleClass().add(Styles.DRAWING_TEXT);
        text.setX(x - 0.42 * em);
        text.setY(y + 0.36 * em);
        return text;
    }

    private static Shape filled(final Shape shape) {
        shape.getStyleClass().addAll(Styles.SYMBOL, Styles.SYMBOL_BODY);
        return shape;
    }

    private static Shape symbol(final Shape shape) {
        shape.getStyleClass().add(Styles.SYMBOL);
        return shape;
    }

    private static Shape cross(final Shape shape) {
        shape.getStyleClass().add(Styles.CROSS);
        return shape;
    }

    private static Shape heavy(final Shape shape) {
        shape.getStyleClass().addAll(Styles.SYMBOL, Styles.HEAVY);
        return shape;
    }
}
