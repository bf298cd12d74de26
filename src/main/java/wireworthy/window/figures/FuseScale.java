package wireworthy.window.figures;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import wireworthy.window.parts.Styles;

/** Where one fuse stands between its floor and its ceiling, on a scale from nothing up. */
final class FuseScale extends Drawing {
    private static final double HEIGHT = 3.6;

    /** Narrower than this, floor and ceiling stand under the scale, not beside the name. */
    private static final double ROOM_FOR_BOTH = 30;

    private static final double TOP = 1.7;
    private static final double ZONE = 1.1;

    private final Region idle = area(Styles.ZONE_IDLE);
    private final Region sound = area(Styles.ZONE_SOUND);
    private final HatchedZone danger = add(new HatchedZone());
    private final Line floor = line(Styles.MARK);
    private final Line ceiling = line(Styles.MARK);
    private final Circle rating = add(new Circle(), Styles.RING);
    private final Label name = text(Styles.STRONG);
    private final Label between = text(Styles.SOFT, Styles.SMALL);
    private Guard guard = new Guard("", 0, 0, 0, "");
    private double most = 1;

    /** Shows a fuse; the scale ends at so many A. */
    void show(final Guard shown, final double mostAmps) {
        guard = shown;
        most = mostAmps;
        final String sign = shown.fits() ? "✓ " : "✗ ";
        name.setText(sign + shown.amps() + " " + shown.place());
        name.getStyleClass()
                .setAll(
                        "label",
                        Styles.STRONG,
                        shown.fits() ? Styles.SOUND_TEXT : Styles.UNSOUND_TEXT);
        between.setText(
                FigureTexts.of(
                        "scale",
                        "floor",
                        shown.floorAmps(),
                        "ceiling",
                        shown.ceilingAmps(),
                        "cable",
                        shown.cable()));
        requestLayout();
    }

    @Override
    double height(final double width) {
        return width < ROOM_FOR_BOTH ? HEIGHT + 1.5 : HEIGHT;
    }

    @Override
    void draw(final double width) {
        put(name, Pos.TOP_LEFT, 0, 0);
        put(between, Pos.TOP_RIGHT, width, width < ROOM_FOR_BOTH ? TOP + ZONE + 0.4 : 0.1);
        final double low = x(guard.floor(), width);
        final double high = x(guard.ceiling(), width);
        lay(idle, 0, TOP, Math.min(low, high), ZONE);
        lay(sound, low, TOP, high - low, ZONE);
        lay(danger, high, TOP, width - high, ZONE);
        List.of(floor, ceiling).forEach(each -> each.toFront());
        lay(floor, low, TOP - 0.2, low, TOP + ZONE + 0.2);
        lay(ceiling, high, TOP - 0.2, high, TOP + ZONE + 0.2);
        rating.toFront();
        rating.setCenterX(x(guard.rating(), width) * em());
        rating.setCenterY((TOP + ZONE / 2) * em());
        rating.setRadius(0.45 * em());
    }

    private double x(final double amps, final double width) {
        return Math.min(1, amps / (most * 1.06)) * width;
    }
}
