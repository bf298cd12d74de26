package wireworthy.window.figures;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.shape.Line;
import wireworthy.facts.StandardSizes;
import wireworthy.window.parts.Styles;

/**
 * Ratings on a number line: each number stands under its tick, the sign whether it fits hangs
 * beside it. The fuse that was chosen is named.
 */
final class RatingTicks {
    private static final double GAP = 0.2;
    private static final double NUMBERS = 0.7;
    private static final double NAME = 1.95;

    private final Drawing on;
    private final List<Tick> ticks;
    private final Line yoursLine;
    private final Label yours;

    private record Tick(double rating, Line line, Label sign, Label number) {}

    RatingTicks(final Drawing on, final List<Double> ratings) {
        this.on = on;
        ticks =
                ratings.stream()
                        .map(each -> new Tick(each, on.line(Styles.AXIS), on.text(), on.text()))
                        .toList();
        yoursLine = on.line(Styles.AXIS);
        yours = on.text(Styles.SMALL, Styles.STRONG);
    }

    void show(final FuseBetween.Shown shown) {
        ticks.forEach(tick -> dress(tick, shown));
        yours.setText(
                shown.yours().stream()
                        .mapToObj(amps -> FigureTexts.of(key(amps), "amps", text(amps)))
                        .findFirst()
                        .orElse(""));
    }

    private String key(final double amps) {
        return ticks.stream().anyMatch(each -> StandardSizes.same(each.rating(), amps))
                ? "fuse.yours"
                : "fuse.yours.odd";
    }

    private static String text(final double amps) {
        return FuseBetween.Shown.amps(amps);
    }

    private static void dress(final Tick tick, final FuseBetween.Shown shown) {
        final double rating = tick.rating();
        final boolean fits = shown.fitting().contains(rating);
        final boolean over = !fits && rating > shown.ceiling();
        final String style = fits ? Styles.SOUND_TEXT : over ? Styles.UNSOUND_TEXT : Styles.SOFT;
        tick.sign().setText(fits ? "✓" : over ? "✗" : "");
        tick.number().setText(text(rating).replace(" A", ""));
        for (final Label label : List.of(tick.sign(), tick.number())) {
            label.getStyleClass().setAll("label", Styles.SMALL, style);
        }
    }

    /**
     * Puts them in their places, in text sizes; of the numbers those that have room, the chosen
     * fuse and those that fit before all others.
     *
     * @param at where so many A stand
     * @param foot of the zones
     */
    void lay(final FuseBetween.Shown shown, final DoubleUnaryOperator at, final double foot) {
        final List<double[]> taken = new ArrayList<>();
        ticks.stream()
                .sorted(Comparator.comparingInt(each -> rank(each.rating(), shown)))
                .forEach(each -> lay(each, at.applyAsDouble(each.rating()), foot, taken));
        yours(shown, at, foot);
    }

    private static int rank(final double rating, final FuseBetween.Shown shown) {
        if (shown.yours().isPresent() && StandardSizes.same(shown.yours().getAsDouble(), rating)) {
            return 0;
        }
        return shown.fitting().contains(rating) ? 1 : 2;
    }

    private void yours(
            final FuseBetween.Shown shown, final DoubleUnaryOperator at, final double foot) {
        yoursLine.setVisible(shown.yours().isPresent());
        yours.setVisible(shown.yours().isPresent());
        shown.yours()
                .ifPresent(
                        amps -> {
                            mark(yoursLine, at.applyAsDouble(amps), foot);
                            on.put(yours, Pos.TOP_CENTER, at.applyAsDouble(amps), foot + NAME);
                        });
    }

    private void mark(final Line line, final double x, final double foot) {
        on.lay(line, x, foot - 0.3, x, foot + 0.3);
    }

    private void lay(
            final Tick tick, final double x, final double foot, final List<double[]> taken) {
        mark(tick.line(), x, foot);
        final double half = on.width(tick.number()) / 2;
        final double sign = tick.sign().getText().isEmpty() ? 0 : on.width(tick.sign()) + GAP;
        final double left = x - half - sign - GAP;
        final double right = x + half + GAP;
        final boolean free = taken.stream().noneMatch(it -> left < it[1] && right > it[0]);
        if (free) {
            taken.add(new double[] {left, right});
        }
        on.put(tick.number(), Pos.TOP_CENTER, x, foot + NUMBERS);
        on.put(tick.sign(), Pos.TOP_RIGHT, x - half - GAP, foot + NUMBERS);
        tick.number().setVisible(free);
        tick.sign().setVisible(free && sign > 0);
    }
}
