package wireworthy.window.figures;

import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.text.TextAlignment;
import wireworthy.window.parts.Styles;

/**
 * The volts lost so far, drawn falling along the cable out and back, to one scale with the limit.
 */
final class VoltsAlongTheRunDrawing extends Drawing {
    private static final double TOP = 2.8;
    private static final double FALL = 8;
    private static final double LEFT = 4.6;
    private static final double RIGHT = 9;

    /** Narrower than this, the poles stand above the ways and what is lost under the drawing. */
    private static final double ROOM_FOR_ALL = 38;

    private static final double NARROW_RIGHT = 0.6;
    private static final double POLES = 1.6;
    private static final double LOST = 2.2;

    /** The limit never stands higher than a third of the drawing. */
    private static final double LIMITS_SHOWN = 3;

    private static final double HEADROOM = 1.1;

    private final ObservableValue<VoltsAlongTheRun.Shown> now;
    private final HatchedZone danger = add(new HatchedZone());
    private final Line level = line(Styles.AXIS);
    private final Line limitLine = line(Styles.LIMIT_LINE);
    private final Line fall = line(Styles.FEED_LINE);
    private final Line middle = line(Styles.HAIRLINE);
    private final Line end = line(Styles.HAIRLINE);
    private final Label dangerWords = text(Styles.ZONE_WORDS);
    private final Circle joint = add(new Circle(), Styles.RING);
    private final Symbol load = add(Symbol.lamp());
    private final Label supply = text(Styles.STRONG);
    private final Label limit = text(Styles.SMALL, Styles.SOFT);
    private final Label lost = text(Styles.STRONG);
    private final Label percent = text(Styles.SMALL, Styles.SOFT);
    private final Label out = text(Styles.SMALL, Styles.SOFT);
    private final Label back = text(Styles.SMALL, Styles.SOFT);
    private final Label plus = text(Styles.SMALL, Styles.SOFT);
    private final Label minus = text(Styles.SMALL, Styles.SOFT);
    private final VerdictLine verdict = add(new VerdictLine());

    VoltsAlongTheRunDrawing(final ObservableValue<VoltsAlongTheRun.Shown> now) {
        this.now = now;
        dangerWords.setText(FigureTexts.of("volts.danger"));
        limit.setTextAlignment(TextAlignment.RIGHT);
        plus.setText(FigureTexts.of("volts.plus"));
        minus.setText(FigureTexts.of("volts.minus"));
        thick(fall, 0.25);
        now.addListener((of, before, shown) -> show(shown));
        show(now.getValue());
    }

    private void show(final VoltsAlongTheRun.Shown shown) {
        supply.setText(shown.supplyVolts());
        limit.setText(FigureTexts.of("volts.limit", "volts", shown.limitVolts()));
        lost.setText(FigureTexts.of("volts.lost", "volts", shown.dropVolts()));
        percent.setText(
                FigureTexts.of(
                        "volts.share", "percent", shown.percent(), "volts", shown.supplyVolts()));
        out.setText(FigureTexts.of("volts.out", "length", shown.metres()));
        back.setText(FigureTexts.of("volts.back", "length", shown.metres()));
        verdict.say(shown.within(), shown.verdict());
        requestLayout();
    }

    @Override
    double height(final double width) {
        return foot(width) + high(verdict, width) + 0.4;
    }

    private static boolean narrow(final double width) {
        return width < ROOM_FOR_ALL;
    }

    /** Where the volts of the supply stand. */
    private static double top(final double width) {
        return narrow(width) ? TOP + POLES : TOP;
    }

    private static double foot(final double width) {
        return top(width) + FALL + (narrow(width) ? LOST : 0.7);
    }

    @Override
    void draw(final double width) {
        final double right = width - (narrow(width) ? NARROW_RIGHT : RIGHT);
        final double top = top(width);
        final double centre = (LEFT + right) / 2;
        ground(top, right);
        lay(middle, centre, top - 0.6, centre, y(top, now.getValue().drop() / 2));
        lay(load, centre - 0.85, top - 2.3, 1.7, 1.7);
        put(out, Pos.TOP_CENTER, (LEFT + centre) / 2, top - 2.1);
        put(back, Pos.TOP_CENTER, (right + centre) / 2, top - 2.1);
        final double poles = narrow(width) ? 0 : top - 2.1;
        put(plus, Pos.TOP_CENTER, LEFT, poles);
        put(minus, Pos.TOP_CENTER, right, poles);
        put(supply, Pos.TOP_RIGHT, LEFT - 0.6, top - 0.8);
        line(top, right);
        lost(top, right, width);
        verdict.lay(em(), width, foot(width));
    }

    private void ground(final double top, final double right) {
        final double edge = y(top, now.getValue().limit());
        lay(level, LEFT, top, right, top);
        lay(danger, LEFT, edge, right - LEFT, top + FALL - edge);
        lay(limitLine, LEFT, edge, right, edge);
        put(dangerWords, Pos.TOP_LEFT, LEFT + 0.8, top + FALL - 2);
        put(limit, Pos.TOP_RIGHT, LEFT - 0.6, Math.max(top + 0.7, edge - 0.8));
    }

    private void line(final double top, final double right) {
        final double y = y(top, now.getValue().drop());
        thick(fall, 0.25);
        lay(fall, LEFT, top, right, y);
        lay(end, right, top, right, y);
        joint.setCenterX(right * em());
        joint.setCenterY(y * em());
        joint.setRadius(0.4 * em());
    }

    private void lost(final double top, final double right, final double width) {
        if (narrow(width)) {
            put(percent, Pos.TOP_RIGHT, width, top + FALL + 0.5);
            put(lost, Pos.TOP_RIGHT, width - width(percent) - 0.6, top + FALL + 0.4);
            return;
        }
        final double y = y(top, now.getValue().drop());
        final double words = Math.min(Math.max(top - 0.6, y - 1.3), top + FALL - 2.6);
        put(lost, Pos.TOP_LEFT, right + 0.9, words);
        put(percent, Pos.TOP_LEFT, right + 0.9, words + 1.4);
    }

    /** Where so many lost volts stand. */
    private double y(final double top, final double volts) {
        final VoltsAlongTheRun.Shown shown = now.getValue();
        final double most = Math.max(LIMITS_SHOWN * shown.limit(), HEADROOM * shown.drop());
        return top + FALL * volts / most;
    }
}
