package wireworthy.window.figures;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import wireworthy.window.parts.Styles;

/** A number line of standard ratings; floor and ceiling stand on it, what lies between is sound. */
final class FuseBetweenDrawing extends Drawing {
    private static final double SIDE = 1.5;
    private static final double ROOM_FOR_BOTH = 34;
    private static final double ZONE = 2.6;
    private static final double GAP = 0.6;

    private final ObservableValue<FuseBetween.Shown> now;
    private final Region idle = area(Styles.ZONE_IDLE);
    private final Region sound = area(Styles.ZONE_SOUND);
    private final HatchedZone danger = add(new HatchedZone());
    private final Label idleWords = text(Styles.SOFT, Styles.SMALL);
    private final Label dangerWords = text(Styles.ZONE_WORDS);
    private final Line axis = line(Styles.AXIS);
    private final Line floorMark = line(Styles.MARK);
    private final Line ceilingMark = line(Styles.MARK);
    private final Label floor = text(Styles.STRONG);
    private final Label floorFrom = text(Styles.SOFT, Styles.SMALL);
    private final Label ceiling = text(Styles.STRONG);
    private final Label ceilingFrom = text(Styles.SOFT, Styles.SMALL);
    private final Map<Double, Tick> ticks = new LinkedHashMap<>();
    private final VerdictLine verdict = add(new VerdictLine());
    private double width;

    private record Tick(Line line, Label label) {}

    FuseBetweenDrawing(final ObservableValue<FuseBetween.Shown> now) {
        this.now = now;
        now.getValue()
                .ratings()
                .forEach(each -> ticks.put(each, new Tick(line(Styles.AXIS), text())));
        now.addListener((of, before, shown) -> show(shown));
        show(now.getValue());
    }

    private void show(final FuseBetween.Shown shown) {
        floor.setText(FigureTexts.of("floor", "amps", shown.floorAmps()));
        floorFrom.setText(shown.floorFrom());
        ceiling.setText(FigureTexts.of("ceiling", "amps", shown.ceilingAmps()));
        ceilingFrom.setText(shown.ceilingFrom());
        verdict.say(shown.fits(), shown.verdict());
        ticks.forEach((rating, tick) -> dress(rating, tick.label(), shown));
        requestLayout();
    }

    private static void dress(
            final double rating, final Label label, final FuseBetween.Shown shown) {
        final String sign = shown.fitting().contains(rating) ? "✓ " : "";
        final String number = FuseBetween.Shown.amps(rating).replace(" A", "");
        label.setText(sign + number);
        label.getStyleClass()
                .setAll(
                        "label",
                        Styles.SMALL,
                        shown.fitting().contains(rating)
                                ? Styles.SOUND_TEXT
                                : rating > shown.ceiling() ? Styles.UNSOUND_TEXT : Styles.SOFT);
    }

    @Override
    double height(final double wide) {
        return top(wide) + ZONE + 5.4;
    }

    /** Where the zones begin. */
    private static double top(final double wide) {
        return wide < ROOM_FOR_BOTH ? 6.2 : 3.6;
    }

    private double x(final double amps) {
        final List<Double> ratings = now.getValue().ratings();
        final double end = ratings.get(ratings.size() - 1) * 1.06;
        return SIDE + Math.min(1, amps / end) * (width - 2 * SIDE);
    }

    @Override
    void draw(final double wide) {
        width = wide;
        final double top = top(wide);
        final double foot = top + ZONE;
        zones(top);
        lay(axis, SIDE, foot, wide - SIDE, foot);
        lay(floorMark, x(now.getValue().floor()), top - 0.8, x(now.getValue().floor()), foot + 0.6);
        final double end = x(now.getValue().ceiling());
        lay(ceilingMark, end, top - 0.8, end, foot + 0.6);
        marks();
        ticks(foot);
        verdict.lay(em(), wide, foot + 2.8);
    }

    private void zones(final double top) {
        final double low = x(now.getValue().floor());
        final double high = x(now.getValue().ceiling());
        final double unused = Math.min(low, high);
        final double end = width - SIDE;
        lay(idle, SIDE, top, unused - SIDE, ZONE);
        lay(sound, unused, top, high - unused, ZONE);
        lay(danger, high, top, end - high, ZONE);
        first(
                idleWords,
                unused - SIDE,
                FigureTexts.of("fuse.idle"),
                FigureTexts.of("fuse.idle.short"));
        put(idleWords, Pos.CENTER, (SIDE + unused) / 2, top + 0.6);
        dangerWords(high, end, top);
    }

    /** The words of danger, clear of the floor's mark where that stands above the ceiling. */
    private void dangerWords(final double from, final double to, final double top) {
        final double mark = Math.max(from, Math.min(to, x(now.getValue().floor())));
        final boolean before = mark - from > to - mark;
        final double left = before ? from : mark;
        final double right = before ? mark : to;
        final String words = FigureTexts.of("fuse.danger");
        first(
                dangerWords,
                right - left,
                words,
                FigureTexts.of("fuse.danger.short"),
                FigureTexts.of("fuse.danger.shorter"),
                "✗");
        put(dangerWords, Pos.CENTER, (left + right) / 2, top + 0.55);
    }

    /** The first of the texts that has room. */
    private void first(final Label label, final double room, final String... texts) {
        for (final String text : texts) {
            label.setText(text);
            if (width(label) + GAP <= room) {
                return;
            }
        }
        label.setText("");
    }

    /** Floor and ceiling side by side, each at its mark; one over the other where it is narrow. */
    private void marks() {
        final FuseBetween.Shown shown = now.getValue();
        final boolean crossed = shown.floor() > shown.ceiling();
        final Pos atFloor = crossed ? Pos.TOP_LEFT : Pos.TOP_RIGHT;
        final Pos atCeiling = crossed ? Pos.TOP_RIGHT : Pos.TOP_LEFT;
        final double second = width < ROOM_FOR_BOTH ? 2.6 : 0;
        if (second > 0) {
            pair(floor, floorFrom, atFloor, x(shown.floor()), 0);
            pair(ceiling, ceilingFrom, atCeiling, x(shown.ceiling()), second);
            return;
        }
        final double shift = shift(shown, crossed);
        pair(floor, floorFrom, atFloor, x(shown.floor()) + shift, 0);
        pair(ceiling, ceilingFrom, atCeiling, x(shown.ceiling()) + shift, 0);
    }

    /** How far both texts move so that neither leaves the drawing. */
    private double shift(final FuseBetween.Shown shown, final boolean crossed) {
        final double floorWide = Math.max(width(floor), width(floorFrom));
        final double ceilingWide = Math.max(width(ceiling), width(ceilingFrom));
        final double left =
                crossed ? x(shown.ceiling()) - ceilingWide : x(shown.floor()) - floorWide;
        final double right =
                crossed ? x(shown.floor()) + floorWide : x(shown.ceiling()) + ceilingWide;
        return left < 0 ? -left : Math.min(0, width - right);
    }

    private void pair(
            final Label first, final Label second, final Pos at, final double x, final double y) {
        final double aside = at == Pos.TOP_LEFT ? 0.4 : -0.4;
        put(first, at, x + aside, y);
        put(second, at, x + aside, y + 1.4);
    }

    /** Ratings that fit keep their number; of the others those that have room. */
    private void ticks(final double foot) {
        final List<double[]> taken = new ArrayList<>();
        final List<Double> fitting = now.getValue().fitting();
        fitting.forEach(each -> tick(each, foot, taken));
        ticks.keySet().stream()
                .filter(each -> !fitting.contains(each))
                .forEach(each -> tick(each, foot, taken));
    }

    private void tick(final double rating, final double foot, final List<double[]> taken) {
        final Tick tick = ticks.getOrDefault(rating, new Tick(axis, floor));
        final double x = x(rating);
        lay(tick.line(), x, foot - 0.3, x, foot + 0.3);
        final double half = width(tick.label()) / 2 + GAP / 3;
        final boolean free = taken.stream().noneMatch(t -> x - half < t[1] && x + half > t[0]);
        if (free) {
            taken.add(new double[] {x - half, x + half});
        }
        put(tick.label(), Pos.TOP_CENTER, x, foot + 0.7);
        tick.label().setVisible(free);
    }
}
