package wireworthy.paper;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.Shape;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;

/** Draws the circuits of a page. */
final class CircuitDrawers implements FSObjectDrawerFactory, FSObjectDrawer {
    private static final Set<String> KINDS =
            Set.of(CircuitOnPaper.KIND, DistributionOnPaper.FEED, DistributionOnPaper.BRANCH);

    /** A pixel of CSS is so many of an inch, which is so many millimetres. */
    private static final double MM_PER_PIXEL = 25.4 / 96;

    @Override
    public FSObjectDrawer createDrawer(final Element e) {
        return this;
    }

    @Override
    public boolean isReplacedObject(final Element e) {
        return KINDS.contains(e.getAttribute("type"));
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
        device.translate(x, y);
        draw(e, new Pen(device, dotsPerPixel / MM_PER_PIXEL));
        device.translate(-x, -y);
        return null;
    }

    private static void branch(final Element e, final DistributionDrawing drawing) {
        final int depth = Integer.parseInt(e.getAttribute("data-depth"));
        drawing.branch(depth, is(e, "data-fused"), e.getAttribute("data-through"));
        if (is(e, "data-missing")) {
            drawing.missing(depth);
        }
    }

    private static boolean is(final Element e, final String attribute) {
        return Boolean.parseBoolean(e.getAttribute(attribute));
    }

    private static void draw(final Element e, final Pen pen) {
        switch (e.getAttribute("type")) {
            case DistributionOnPaper.FEED -> new DistributionDrawing(pen).feed();
            case DistributionOnPaper.BRANCH -> branch(e, new DistributionDrawing(pen));
            default ->
                    new CircuitSketch(pen)
                            .circuit(
                                    CircuitOnPaper.Load.valueOf(e.getAttribute("data-load")),
                                    Integer.parseInt(e.getAttribute("data-branches")));
        }
    }
}
