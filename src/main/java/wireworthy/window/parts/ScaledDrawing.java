package wireworthy.window.parts;

import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Line;
import javafx.scene.text.Text;
import javafx.scene.transform.Scale;

/**
 * A drawing sized by the text, so that it grows with it. It is drawn at one size of text and scaled
 * as a whole, so that its lines scale with it.
 */
abstract class ScaledDrawing extends Pane {
    /** The size of text it is drawn at. */
    static final double EM = 17;

    private final double wide;
    private final double high;
    private final Scale scale = new Scale(1, 1);
    private final Text ruler = new Text("M");

    /**
     * @param wide in text sizes
     * @param high in text sizes
     */
    ScaledDrawing(final double wide, final double high) {
        this.wide = wide;
        this.high = high;
        getStyleClass().add(Styles.DRAWING);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        ruler.setVisible(false);
    }

    /** Shows the parts of the drawing. */
    final void draw(final List<Node> parts) {
        final Group drawn = new Group(parts);
        drawn.getTransforms().add(scale);
        drawn.setManaged(false);
        getChildren().setAll(ruler, drawn);
        ruler.fontProperty().subscribe(font -> size(font.getSize()));
    }

    private void size(final double em) {
        scale.setX(em / EM);
        scale.setY(em / EM);
        setMinSize(wide * em, high * em);
        setPrefSize(wide * em, high * em);
        setMaxSize(wide * em, high * em);
    }

    /** A length in text sizes as it is drawn. */
    static double at(final double ems) {
        return ems * EM;
    }

    /** A text whose foot stands there. */
    static Node text(final String words, final double x, final double y) {
        final Text text = new Text(words);
        text.getStyleClass().add(Styles.DRAWING_TEXT);
        text.setX(at(x));
        text.setY(at(y));
        return text;
    }

    /** A thin conductor. */
    static Node lead(final double x1, final double y1, final double x2, final double y2) {
        return line(x1, y1, x2, y2, Styles.SYMBOL);
    }

    /** A cable. */
    static Node copper(final double x1, final double y1, final double x2, final double y2) {
        return line(x1, y1, x2, y2, Styles.CONDUCTOR);
    }

    /** A line of a style. */
    static Node line(
            final double x1,
            final double y1,
            final double x2,
            final double y2,
            final String style) {
        final Line line = new Line(at(x1), at(y1), at(x2), at(y2));
        line.getStyleClass().add(style);
        return line;
    }
}
