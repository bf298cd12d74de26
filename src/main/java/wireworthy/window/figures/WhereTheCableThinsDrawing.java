package wireworthy.window.figures;

import java.util.List;
import java.util.stream.Stream;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.shape.Line;
import wireworthy.window.parts.Styles;

/** The circuit with its fuses, the cables as thick as their sections; under it a scale a fuse. */
final class WhereTheCableThinsDrawing extends Drawing {
    private static final double TOP = 3;
    private static final double OUT = TOP + 3.4;
    private static final double BACK = OUT + 5.2;
    private static final double FOOT = BACK + 2;
    private static final double LEFT = 0.6;
    private static final double FUSE = 2.6;
    private static final double LOAD = 2;
    private static final double THICKEST = 0.55;
    private static final double THINNEST = 0.1;

    /** mm2 drawn at the thickest. */
    private static final double THICK_SECTION = 10e-6;

    private final ObservableValue<WhereTheCableThins.Shown> now;
    private final HatchedZone danger = add(new HatchedZone());
    private final HatchedZone thinDanger = add(new HatchedZone());
    private final List<Line> feed = lines(4);
    private final List<Line> thin = lines(3);
    private final Symbol battery = add(Symbol.battery());
    private final Symbol fuse = add(Symbol.fuse());
    private final Symbol second = add(Symbol.fuse());
    private final Symbol load = add(Symbol.lamp());
    private final Label none = text(Styles.SOFT, Styles.SMALL);
    private final Label batteryWord = text(Styles.SOFT, Styles.SMALL);
    private final Label boardWord = text(Styles.SOFT, Styles.SMALL);
    private final Label fuseAmps = text(Styles.STRONG);
    private final Label secondAmps = text(Styles.STRONG);
    private final Label loadAmps = text(Styles.STRONG);
    private final Label feedWords = text(Styles.STRONG);
    private final Label feedAmps = text(Styles.SMALL, Styles.SOFT);
    private final Label thinWords = text(Styles.STRONG);
    private final Label thinAmps = text(Styles.SMALL, Styles.SOFT);
    private final FuseScale boardScale = add(new FuseScale());
    private final FuseScale secondScale = add(new FuseScale());
    private final VerdictLine verdict = add(new VerdictLine());

    WhereTheCableThinsDrawing(final ObservableValue<WhereTheCableThins.Shown> now) {
        this.now = now;
        batteryWord.setText("battery");
        boardWord.setText("fuse board");
        none.setText("no fuse where the cable thins: the one at the board guards both cables");
        now.addListener((of, before, shown) -> show(shown));
        show(now.getValue());
    }

    private List<Line> lines(final int count) {
        return Stream.generate(() -> line(Styles.FEED_LINE)).limit(count).toList();
    }

    private void show(final WhereTheCableThins.Shown shown) {
        fuseAmps.setText(shown.board().amps());
        secondAmps.setText(shown.twoFuses() ? shown.beforeThinner().amps() : "");
        second.setVisible(shown.twoFuses());
        loadAmps.setText(shown.amps());
        feedWords.setText(shown.feed().section());
        feedAmps.setText("carries " + shown.feed().amps());
        thinWords.setText(shown.thinner().section());
        thinAmps.setText("carries " + shown.thinner().amps());
        danger.setVisible(exceeds(shown.board(), shown.feed()));
        thinDanger.setVisible(exceeds(shown.beforeThinner(), shown.thinner()));
        boardScale.show(shown.board(), shown.mostAmps());
        secondScale.show(shown.beforeThinner(), shown.mostAmps());
        secondScale.setVisible(shown.twoFuses());
        verdict.say(shown.sound(), shown.verdict());
        requestLayout();
    }

    private static boolean exceeds(final Guard guard, final WhereTheCableThins.Stretch stretch) {
        return guard.rating() > stretch.ampacity();
    }

    /** Room for two scales and a verdict of two lines: nothing jumps. The worst is said first. */
    @Override
    double height(final double width) {
        return FOOT + 2 * FuseScale.HEIGHT;
    }

    @Override
    void draw(final double width) {
        final double right = width - LOAD / 2 - 0.2;
        final double change = width * 0.52;
        feed(change);
        thin(change, right);
        source();
        cables(change, right);
        lay(boardScale, 0, FOOT, width, FuseScale.HEIGHT);
        lay(secondScale, 0, FOOT + FuseScale.HEIGHT, width, FuseScale.HEIGHT);
        put(none, Pos.TOP_LEFT, 0, FOOT + FuseScale.HEIGHT + 0.6);
        none.setVisible(!now.getValue().twoFuses());
        verdict.lay(em(), width, 0);
    }

    private void feed(final double change) {
        final double thick = thickness(0);
        lay(feed.get(0), LEFT, OUT, change, OUT);
        lay(feed.get(1), LEFT, OUT - thick / 2, LEFT, BACK + thick / 2);
        lay(feed.get(2), LEFT, BACK, LEFT + 2, BACK);
        lay(feed.get(3), LEFT + 2 + FUSE, BACK, change, BACK);
        feed.forEach(each -> thick(each, thick));
        lay(fuse, LEFT + 2, OUT - 0.5, FUSE, 1);
        lay(battery, LEFT + 2, BACK - 1, FUSE, 2);
        lay(danger, LEFT + 2 + FUSE, OUT - 0.8, change - LEFT - 2 - FUSE, 1.6);
    }

    private void thin(final double change, final double right) {
        final double thick = thickness(1);
        lay(thin.get(0), change, OUT, right, OUT);
        lay(thin.get(1), change, BACK, right, BACK);
        lay(thin.get(2), right, OUT - thick / 2, right, BACK + thick / 2);
        thin.forEach(each -> thick(each, thick));
        lay(second, change, OUT - 0.5, FUSE, 1);
        lay(load, right - LOAD / 2, (OUT + BACK - LOAD) / 2, LOAD, LOAD);
        final double from = now.getValue().twoFuses() ? change + FUSE : change;
        lay(thinDanger, from, OUT - 0.8, right - from, 1.6);
    }

    private void source() {
        final double board = LEFT + 2 + FUSE / 2;
        put(boardWord, Pos.TOP_CENTER, board, TOP + 0.1);
        put(fuseAmps, Pos.TOP_CENTER, board, TOP + 1.3);
        put(batteryWord, Pos.TOP_LEFT, LEFT + 2 + FUSE + 0.4, BACK - 1.7);
    }

    private void cables(final double change, final double right) {
        put(secondAmps, Pos.TOP_CENTER, change + FUSE / 2, TOP + 1.3);
        put(loadAmps, Pos.TOP_RIGHT, right - LOAD / 2 - 0.6, (OUT + BACK) / 2 - 0.7);
        final double feedMiddle = (LEFT + 2 + FUSE + change) / 2;
        final double thinMiddle = (change + FUSE + right) / 2;
        put(feedWords, Pos.TOP_CENTER, feedMiddle, OUT + 0.9);
        put(feedAmps, Pos.TOP_CENTER, feedMiddle, OUT + 2.2);
        put(thinWords, Pos.TOP_CENTER, thinMiddle, OUT + 0.9);
        put(thinAmps, Pos.TOP_CENTER, thinMiddle, OUT + 2.2);
    }

    private double thickness(final int cable) {
        final double share = Math.sqrt(now.getValue().thicknesses().get(cable) / THICK_SECTION);
        return THINNEST + (THICKEST - THINNEST) * Math.min(1, share);
    }
}
