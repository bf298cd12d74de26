package wireworthy.paper;

import com.openhtmltopdf.css.parser.FSRGBColor;
import com.openhtmltopdf.extend.OutputDevice;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;

/** Draws in millimetres, black on white. */
final class Pen {
    /** Width of symbols and leads, mm. */
    static final double THIN = 0.25;

    /** Width of conductors and of the plates of a cell, mm. */
    static final double THICK = 0.55;

    private final OutputDevice device;
    private final double scale;

    /**
     * A pen.
     *
     * @param scale units of the device in a millimetre
     */
    Pen(final OutputDevice device, final double scale) {
        this.device = device;
        this.scale = scale;
        device.setColor(new FSRGBColor(0, 0, 0));
    }

    void line(final double wide, final double x, final double y, final double x2, final double y2) {
        draw(wide, new Line2D.Double(x, y, x2, y2));
    }

    void box(final double x, final double y, final double width, final double height) {
        draw(THIN, new Rectangle2D.Double(x, y, width, height));
    }

    void round(final double x, final double y, final double radius) {
        draw(THIN, new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius));
    }

    /** A fuse of IEC 60617, lying: its conductor runs through the box. */
    void fuse(final double x, final double y) {
        box(x, y - 1.6, 8, 3.2);
        line(THIN, x, y, x + 8, y);
    }

    /** A battery of two cells, the longer plates towards the positive pole above. */
    void battery(final double x, final double y) {
        battery(x, y, -1);
    }

    /** The same, the longer plates towards the positive pole below. */
    void batteryFeedingDown(final double x, final double y) {
        battery(x, y, 1);
    }

    private void battery(final double x, final double y, final int plus) {
        line(THIN, x - 4, y + 3 * plus, x + 4, y + 3 * plus);
        line(THICK, x - 2, y + 1.2 * plus, x + 2, y + 1.2 * plus);
        line(THIN, x - 4, y - 1.2 * plus, x + 4, y - 1.2 * plus);
        line(THICK, x - 2, y - 3 * plus, x + 2, y - 3 * plus);
    }

    private void draw(final double wide, final Shape shape) {
        device.setStroke(new BasicStroke((float) (wide * scale)));
        device.draw(AffineTransform.getScaleInstance(scale, scale).createTransformedShape(shape));
    }
}
