package wireworthy.window.figures;

import java.util.List;
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
    private static final double LEAST = 0.1;
    private static final double ASIDE = 0.4;
    private static final double SECOND = 2.6;
    private static final double VERDICT = 2.6;

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
    private final RatingTicks ticks;
    private final VerdictLine verdict = add(new VerdictLine());
    private double width;

    FuseBetweenDrawing(final ObservableValue<FuseBetween.Shown> now) {
        this.now = now;
        ticks = new RatingTicks(this, now.getValue().ratings());
        now.addListener((of, before, shown) -> show(shown));
        show(now.getValue());
    }

    private void show(final FuseBetween.Shown shown) {
        floor.setText(FigureTexts.of("floor", "amps", shown.floorAmps()));
        floorFrom.setText(shown.floorFrom());
        ceiling.setText(FigureTexts.of("ceiling", "amps", shown.ceilingAmps()));
        ceilingFrom.setText(shown.ceilingFrom());
        verdict.say(shown.fits(), shown.verdict());
        ticks.show(shown);
        requestLayout();
    }

    @Override
    double height(final double wide) {
        final double said = verdict.prefHeight(wide * em()) / em() + 0.2;
        return top(wide) + ZONE + below() + Math.max(VERDICT, said);
    }

    /** What stands between the zones and the verdict: numbers, and the name of one of them. */
    private double below() {
        return now.getValue().yours().isEmpty() ? 2.8 : 3.6;
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
        marks(top);
        ticks.lay(now.getValue(), this::x, foot);
        verdict.lay(em(), wide, foot + below());
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
            if (width(label) + (text.length() == 1 ? LEAST : GAP) <= room) {
                return;
            }
        }
        label.setText("");
    }

    /** Floor and ceiling side by side, each at its mark; one over the other where it is narrow. */
    private void marks(final double top) {
        final FuseBetween.Shown shown = now.getValue();
        final boolean crossed = shown.floor() > shown.ceiling();
        final Beside atFloor = beside(floor, floorFrom, shown.floor(), crossed);
        final Beside atCeiling = beside(ceiling, ceilingFrom, shown.ceiling(), !crossed);
        if (width < ROOM_FOR_BOTH) {
            stacked(atFloor.turned(0, width), atCeiling.turned(0, width), top);
        } else {
            sideBySide(crossed ? atCeiling : atFloor, crossed ? atFloor : atCeiling);
        }
    }

    private Beside beside(
            final Label name, final Label from, final double amps, final boolean toTheRight) {
        return new Beside(name, from, x(amps), Math.max(width(name), width(from)), toTheRight);
    }

    /** The mark of the floor goes up to its words unless those of the ceiling are in its way. */
    private void stacked(final Beside atFloor, final Beside atCeiling, final double top) {
        put(atFloor, 0, 0);
        put(atCeiling, 0, SECOND);
        if (!atCeiling.covers(atFloor.x(), width)) {
            lay(floorMark, atFloor.x(), 0.3, atFloor.x(), top + ZONE + 0.6);
        }
    }

    /** On the other side of its mark where only there is room; else as near to it as can be. */
    private void sideBySide(final Beside low, final Beside high) {
        final Beside left = low.turned(0, high.x() - GAP);
        final Beside right = left.toTheRight() ? high : high.turned(low.x() + GAP, width);
        final double shift = shift(left, right);
        put(left, shift, 0);
        put(right, shift, 0);
    }

    /** How far both move where one that is kept inside the drawing would touch the other. */
    private double shift(final Beside left, final Beside right) {
        final boolean apart =
                Math.max(0, left.left()) + left.wide() + GAP
                        <= Math.min(width - right.wide(), right.left());
        if (apart) {
            return 0;
        }
        return left.left() < 0 ? -left.left() : Math.min(0, width - right.right());
    }

    private void put(final Beside texts, final double shift, final double y) {
        final Pos at = texts.toTheRight() ? Pos.TOP_LEFT : Pos.TOP_RIGHT;
        final double x = texts.x() + shift + (texts.toTheRight() ? ASIDE : -ASIDE);
        put(texts.name(), at, x, y);
        put(texts.from(), at, x, y + 1.4);
    }

    /** Two texts beside a mark at x. */
    private record Beside(Label name, Label from, double x, double wide, boolean toTheRight) {
        private double left() {
            return toTheRight ? x + ASIDE : x - ASIDE - wide;
        }

        private double right() {
            return left() + wide;
        }

        /** Kept inside a drawing that is so wide. */
        private boolean covers(final double other, final double width) {
            final double begin = Math.max(0, Math.min(width - wide, left()));
            return other > begin - LEAST && other < begin + wide + LEAST;
        }

        /** On the other side of the mark, if it has room there and none on this one. */
        private Beside turned(final double from, final double to) {
            final Beside other = new Beside(name, this.from, x, wide, !toTheRight);
            return !isWithin(from, to) && other.isWithin(from, to) ? other : this;
        }

        private boolean isWithin(final double from, final double to) {
            return left() >= from && right() <= to;
        }
    }
}
