package wireworthy.paper;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.Shape;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;

/** Draws the circuits of a page. */
final class CircuitDrawers implements FSObjectDrawerFactory, FSObjectDrawer {
    private static final double WIDTH_IN_MM = 78;

    @Override
    public FSObjectDrawer createDrawer(final Element e) {
        return this;
    }

    @Override
    public boolean isReplacedObject(final Element e) {
        return e.getAttribute("type").equals(CircuitOnPaper.KIND);
    }

    @Override
    public @Nullable Map<Shape, String> drawObject(
            final Element e,
            final double x,
            final double y,
            final double width,
            final double height,
            final OutputDevice device,
            final RenderingContext context,
            final int dotsPerPixel) {
        final CircuitOnPaper.Load load = CircuitOnPaper.Load.valueOf(e.getAttribute("data-load"));
        final double scale = width / WIDTH_IN_MM;
        device.translate(x, y);
        new CircuitPen(device, scale).circuit(load);
        device.translate(-x, -y);
        return null;
    }
}
