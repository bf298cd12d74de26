package wireworthy.window.figures;

import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import wireworthy.window.parts.Styles;

/**
 * The volts lost so far, drawn falling along the cable out and back, to one scale with the limit.
 */
final class VoltsAlongTheRunDrawing extends Drawing {
    private static final double TOP = 2.8;
    private static final double FALL = 8;
    private static final double LEFT = 4;
    private static final double RIGHT = 9;
    private static final double ROOM_FOR_POLES = 25;

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
        return TOP + FALL + 2.8;
    }

    @Override
    void draw(final double width) {
        final double right = width - RIGHT;
        final double centre = (LEFT + right) / 2;
        ground(right);
        lay(middle, centre, TOP - 0.6, centre, TOP + FALL);
        lay(load, centre - 0.85, TOP - 2.3, 1.7, 1.7);
        put(out, Pos.TOP_CENTER, (LEFT + centre) / 2, TOP - 2.1);
        put(back, Pos.TOP_CENTER, (right + centre) / 2, TOP - 2.1);
        put(plus, Pos.TOP_CENTER, LEFT, TOP - 2.1);
        put(minus, Pos.TOP_CENTER, right, TOP - 2.1);
        final boolean room = right - LEFT >= ROOM_FOR_POLES;
        plus.setVisible(room);
        minus.setVisible(room);
        put(supply, Pos.TOP_RIGHT, LEFT - 0.6, TOP - 0.8);
        line(right);
        verdict.lay(em(), width, TOP + FALL + 0.7);
    }

    private void ground(final double right) {
        final double edge = y(now.getValue().limit());
        lay(level, LEFT, TOP, right, TOP);
        lay(danger, LEFT, edge, right - LEFT, TOP + FALL - edge);
        lay(limitLine, LEFT, edge, right, edge);
        put(dangerWords, Pos.TOP_LEFT, LEFT + 0.8, TOP + FALL - 2);
        put(limit, Pos.TOP_LEFT, LEFT + 0.4, edge - 1.5);
    }

    private void line(final double right) {
        final double y = y(now.getValue().drop());
        thick(fall, 0.25);
        lay(fall, LEFT, TOP, right, y);
        lay(end, right, TOP, right, y);
        joint.setCenterX(right * em());
        joint.setCenterY(y * em());
        joint.setRadius(0.4 * em());
        final double words = Math.min(Math.max(TOP - 0.6, y - 1.3), TOP + FALL - 2.6);
        put(lost, Pos.TOP_LEFT, right + 0.9, words);
        put(percent, Pos.TOP_LEFT, right + 0.9, words + 1.4);
    }

    /** Where so many lost volts stand. */
    private double y(final double volts) {
        final VoltsAlongTheRun.Shown shown = now.getValue();
        final double most = Math.max(LIMITS_SHOWN * shown.limit(), HEADROOM * shown.drop());
        return TOP + FALL * volts / most;
    }
}
