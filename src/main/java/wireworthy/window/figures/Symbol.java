package wireworthy.window.figures;

import java.util.Locale;
import javafx.scene.layout.Region;
import javafx.scene.shape.SVGPath;
import wireworthy.window.parts.Styles;

/** A circuit symbol of IEC 60617 in outline, stretched to the room it is given. */
final class Symbol extends Region {
    /** The path of a symbol that is so wide and so high. */
    @FunctionalInterface
    private interface Outline {
        String path(double width, double height);
    }

    private final SVGPath lines = new SVGPath();
    private Outline outline;

    private Symbol(final Outline outline) {
        this.outline = outline;
        lines.getStyleClass().add(Styles.OUTLINE);
        lines.setManaged(false);
        getChildren().add(lines);
    }

    /** A lamp: a circle with a cross. */
    static Symbol lamp() {
        return new Symbol(
                (w, h) ->
                        path(
                                "M0 %2$f A%1$f %2$f 0 1 1 %3$f %2$f A%1$f %2$f 0 1 1 0 %2$f"
                                        + "M%4$f %5$f L%6$f %7$f M%4$f %7$f L%6$f %5$f",
                                w / 2, h / 2, w, w * 0.146, h * 0.146, w * 0.854, h * 0.854));
    }

    /** Any other load: a box. */
    static Symbol load() {
        return new Symbol((w, h) -> path("M0 0 L%1$f 0 L%1$f %2$f L0 %2$f Z", w, h));
    }

    /** A battery of two cells, its conductors leaving at the sides. */
    static Symbol battery() {
        return new Symbol(
                (w, h) ->
                        path(
                                "M0 %5$f L%1$f %5$f M%1$f 0 L%1$f %6$f M%2$f %7$f L%2$f %8$f"
                                        + "M%3$f 0 L%3$f %6$f M%4$f %7$f L%4$f %8$f"
                                        + "M%4$f %5$f L%9$f %5$f",
                                w * 0.2, w * 0.4, w * 0.6, w * 0.8, h / 2, h, h * 0.27, h * 0.73,
                                w));
    }

    /** A fuse: a box with its conductor running through. */
    static Symbol fuse() {
        return new Symbol(
                (w, h) ->
                        path("M0 0 L%1$f 0 L%1$f %2$f L0 %2$f Z M0 %3$f L%1$f %3$f", w, h, h / 2));
    }

    /** An inverter: a box parted by a line, direct current in it at left, alternating at right. */
    static Symbol inverter() {
        return new Symbol(
                (w, h) ->
                        path(
                                "M0 0 L%1$f 0 L%1$f %2$f L0 %2$f Z M0 %2$f L%1$f 0"
                                        + "M%3$f %4$f L%5$f %4$f M%3$f %6$f L%5$f %6$f"
                                        + "M%7$f %8$f Q%9$f %10$f %11$f %8$f"
                                        + "Q%12$f %13$f %14$f %8$f",
                                w, h, w * 0.12, h * 0.25, w * 0.36, h * 0.38, w * 0.6, h * 0.7,
                                w * 0.67, h * 0.5, w * 0.74, w * 0.81, h * 0.9, w * 0.88));
    }

    /** A switch. */
    static Symbol contact() {
        final Symbol symbol = new Symbol((w, h) -> "");
        symbol.close(false);
        return symbol;
    }

    /** Closes or opens a switch. */
    void close(final boolean closed) {
        outline =
                (w, h) ->
                        path(
                                "M0 %1$f L%2$f %1$f L%3$f %4$f M%3$f %1$f L%5$f %1$f",
                                h / 2, w * 0.25, w * 0.75, closed ? h / 2 : 0, w);
        requestLayout();
    }

    private static String path(final String pattern, final Object... lengths) {
        return String.format(Locale.ROOT, pattern, lengths);
    }

    @Override
    protected void layoutChildren() {
        lines.setContent(outline.path(getWidth(), getHeight()));
    }
}
