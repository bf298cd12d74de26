package wireworthy.paper;

import com.openhtmltopdf.css.parser.FSRGBColor;
import com.openhtmltopdf.extend.OutputDevice;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;

/** Strokes in millimetres: conductors and the symbols of IEC 60617. */
final class CircuitPen {
    private static final double THIN = 0.25;
    private static final double THICK = 0.55;
    private static final double LEFT = 17;
    private static final double RIGHT = 65;
    private static final double TOP = 9;
    private static final double BOTTOM = 26;
    private static final double MIDDLE = (TOP + BOTTOM) / 2;
    private static final double RADIUS = 4;

    private final OutputDevice device;
    private final double scale;

    /**
     * A pen.
     *
     * @param scale units of the device in a millimetre
     */
    CircuitPen(final OutputDevice device, final double scale) {
        this.device = device;
        this.scale = scale;
        device.setColor(new FSRGBColor(0, 0, 0));
    }

    /** Supply, fuse, cable out and back, and what it feeds. */
    void circuit(final CircuitOnPaper.Load load) {
        battery();
        line(THICK, LEFT, TOP, 23, TOP);
        box(23, TOP - 1.6, 8, 3.2);
        line(THIN, 23, TOP, 31, TOP);
        line(THICK, 31, TOP, RIGHT, TOP);
        line(THICK, LEFT, BOTTOM, RIGHT, BOTTOM);
        if (load == CircuitOnPaper.Load.SEVERAL) {
            lamp(RIGHT - 14);
            lamp(RIGHT);
        } else {
            single(load);
        }
    }

    private void single(final CircuitOnPaper.Load load) {
        switch (load) {
            case MOTOR -> round(RIGHT);
            case HEATER, BATTERY -> heater();
            case CONVERTER -> converter();
            case LAMP, SEVERAL -> lamp(RIGHT);
        }
    }

    /** Two cells, the longer plates towards the positive pole above. */
    private void battery() {
        line(THIN, LEFT, TOP, LEFT, MIDDLE - 3);
        line(THIN, LEFT - 4, MIDDLE - 3, LEFT + 4, MIDDLE - 3);
        line(THICK, LEFT - 2, MIDDLE - 1.2, LEFT + 2, MIDDLE - 1.2);
        line(THIN, LEFT - 4, MIDDLE + 1.2, LEFT + 4, MIDDLE + 1.2);
        line(THICK, LEFT - 2, MIDDLE + 3, LEFT + 2, MIDDLE + 3);
        line(THIN, LEFT, MIDDLE + 3, LEFT, BOTTOM);
    }

    private void leads(final double x, final double reach) {
        line(THIN, x, TOP, x, MIDDLE - reach);
        line(THIN, x, MIDDLE + reach, x, BOTTOM);
    }

    private void round(final double x) {
        leads(x, RADIUS);
        draw(THIN, new Ellipse2D.Double(x - RADIUS, MIDDLE - RADIUS, 2 * RADIUS, 2 * RADIUS));
    }

    private void lamp(final double x) {
        round(x);
        final double reach = RADIUS * Math.sqrt(0.5);
        line(THIN, x - reach, MIDDLE - reach, x + reach, MIDDLE + reach);
        line(THIN, x - reach, MIDDLE + reach, x + reach, MIDDLE - reach);
    }

    private void heater() {
        leads(RIGHT, RADIUS);
        box(RIGHT - 1.8, MIDDLE - RADIUS, 3.6, 2 * RADIUS);
    }

    private void converter() {
        leads(RIGHT, RADIUS);
        box(RIGHT - RADIUS, MIDDLE - RADIUS, 2 * RADIUS, 2 * RADIUS);
        line(THIN, RIGHT - RADIUS, MIDDLE + RADIUS, RIGHT + RADIUS, MIDDLE - RADIUS);
    }

    private void box(final double x, final double y, final double width, final double height) {
        draw(THIN, new Rectangle2D.Double(x, y, width, height));
    }

    private void line(
            final double wide, final double x, final double y, final double x2, final double y2) {
        draw(wide, new Line2D.Double(x, y, x2, y2));
    }

    private void draw(final double wide, final Shape shape) {
        device.setStroke(new BasicStroke((float) (wide * scale)));
        device.draw(AffineTransform.getScaleInstance(scale, scale).createTransformedShape(shape));
    }
}
