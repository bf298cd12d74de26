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
    private static final double OVER = 3.4;
    private static final double HIGH = 5.2;
    private static final double UNDER = 2;

    /** Text sizes of width that the usual verdict takes in one line. */
    private static final double ONE_LINE = 40;

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
    private final Label none = paragraph(Styles.SOFT, Styles.SMALL);
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

    /** Where the conductors out and back lie, in text sizes. */
    private double out;

    private double back;

    WhereTheCableThinsDrawing(final ObservableValue<WhereTheCableThins.Shown> now) {
        this.now = now;
        batteryWord.setText(FigureTexts.of("thins.battery"));
        boardWord.setText(FigureTexts.of("thins.board"));
        none.setText(FigureTexts.of("thins.none"));
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
        feedAmps.setText(FigureTexts.of("carries", "amps", shown.feed().amps()));
        thinWords.setText(shown.thinner().section());
        thinAmps.setText(FigureTexts.of("carries", "amps", shown.thinner().amps()));
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
        return top(width) + OVER + HIGH + UNDER + 2 * boardScale.height(width);
    }

    private static double top(final double width) {
        return 1.7 * Math.ceil(2 * ONE_LINE / width) + 0.4;
    }

    @Override
    void draw(final double width) {
        out = top(width) + OVER;
        back = out + HIGH;
        final double right = width - LOAD / 2 - 0.2;
        final double change = width * 0.52;
        feed(change);
        thin(change, right);
        source();
        cables(change, right);
        final double scale = boardScale.height(width);
        lay(boardScale, 0, back + UNDER, width, scale);
        lay(secondScale, 0, back + UNDER + scale, width, scale);
        lay(none, 0, back + UNDER + scale + 0.6, width, high(none, width));
        none.setVisible(!now.getValue().twoFuses());
        verdict.lay(em(), width, 0);
    }

    private void feed(final double change) {
        final double thick = thickness(0);
        lay(feed.get(0), LEFT, out, change, out);
        lay(feed.get(1), LEFT, out - thick / 2, LEFT, back + thick / 2);
        lay(feed.get(2), LEFT, back, LEFT + 2, back);
        lay(feed.get(3), LEFT + 2 + FUSE, back, change, back);
        feed.forEach(each -> thick(each, thick));
        lay(fuse, LEFT + 2, out - 0.5, FUSE, 1);
        lay(battery, LEFT + 2, back - 1, FUSE, 2);
        lay(danger, LEFT + 2 + FUSE, out - 0.8, change - LEFT - 2 - FUSE, 1.6);
    }

    private void thin(final double change, final double right) {
        final double thick = thickness(1);
        lay(thin.get(0), change, out, right, out);
        lay(thin.get(1), change, back, right, back);
        lay(thin.get(2), right, out - thick / 2, right, back + thick / 2);
        thin.forEach(each -> thick(each, thick));
        lay(second, change, out - 0.5, FUSE, 1);
        lay(load, right - LOAD / 2, (out + back - LOAD) / 2, LOAD, LOAD);
        final double from = now.getValue().twoFuses() ? change + FUSE : change;
        lay(thinDanger, from, out - 0.8, right - from, 1.6);
    }

    private void source() {
        final double board = LEFT + 2 + FUSE / 2;
        put(boardWord, Pos.TOP_CENTER, board, out - OVER + 0.1);
        put(fuseAmps, Pos.TOP_CENTER, board, out - OVER + 1.3);
        put(batteryWord, Pos.TOP_LEFT, LEFT + 2 + FUSE + 0.4, back - 1.7);
    }

    private void cables(final double change, final double right) {
        put(secondAmps, Pos.TOP_CENTER, change + FUSE / 2, out - OVER + 1.3);
        put(loadAmps, Pos.TOP_RIGHT, right + LOAD / 2, out - 2.2);
        final double feedMiddle = (LEFT + 2 + FUSE + change) / 2;
        final double thinMiddle = (change + right - LOAD / 2) / 2;
        put(feedWords, Pos.TOP_CENTER, feedMiddle, out + 0.9);
        put(feedAmps, Pos.TOP_CENTER, feedMiddle, out + 2.2);
        put(thinWords, Pos.TOP_CENTER, thinMiddle, out + 0.9);
        put(thinAmps, Pos.TOP_CENTER, thinMiddle, out + 2.2);
    }

    private double thickness(final int cable) {
        final double share = Math.sqrt(now.getValue().thicknesses().get(cable) / THICK_SECTION);
        return THINNEST + (THICKEST - THINNEST) * Math.min(1, share);
    }
}
