package wireworthy.window.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javafx.geometry.Pos;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.shape.Line;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** A ladder: the feed down the left, the way back up the right, a rung for each load. */
final class LampsOnAFeedDrawing extends Drawing {
    private static final double TOP = 1.9;
    private static final double FIRST = 4.9;
    private static final double STEP = 2.9;
    private static final double BETWEEN = 0.7;
    private static final double LAMP = 1.7;
    private static final double THINNEST = 0.12;
    private static final double THICKEST = 0.5;

    private final LampsOnAFeed model;
    private final Label feedAmps = text(Styles.LARGE);
    private final Line source = line(Styles.FEED_LINE);
    private final Line sourceBack = line(Styles.FEED_LINE);
    private final Symbol fuse = add(Symbol.fuse());
    private final Symbol battery = add(Symbol.battery());
    private final Label fuseWord = text(Styles.SOFT, Styles.SMALL);
    private final Label volts = text(Styles.SOFT, Styles.SMALL);
    private final List<Rung> rungs = new ArrayList<>();

    private record Rung(
            CheckBox box,
            Line feed,
            Line back,
            Line out,
            Line in,
            Line end,
            Symbol contact,
            Symbol load,
            Label amps) {}

    LampsOnAFeedDrawing(final LampsOnAFeed model) {
        this.model = model;
        fuseWord.setText(FigureTexts.of("lamps.fuse"));
        model.switches().forEach(each -> rungs.add(rung(each)));
        model.now().addListener((of, before, shown) -> show(shown));
        show(model.now().getValue());
    }

    private Rung rung(final LoadSwitch load) {
        final CheckBox box = add(new CheckBox(Texts.kept(load.text())), Styles.SWITCH);
        box.setWrapText(true);
        box.selectedProperty().bindBidirectional(load.on());
        return new Rung(
                box,
                line(Styles.FEED_LINE),
                line(Styles.FEED_LINE),
                line(Styles.FEED_LINE),
                line(Styles.FEED_LINE),
                line(Styles.FEED_LINE),
                add(Symbol.contact()),
                add(isLamp(load) ? Symbol.lamp() : Symbol.load()),
                text());
    }

    private static boolean isLamp(final LoadSwitch load) {
        final String name = load.load().name().toLowerCase(Locale.ROOT);
        return Stream.of(FigureTexts.of("lamps.kinds").split(" ", -1)).anyMatch(name::contains);
    }

    private void show(final LampsOnAFeed.Shown shown) {
        feedAmps.setText(FigureTexts.of("lamps.feed", "amps", shown.feedAmps()));
        volts.setText(shown.volts());
        for (int i = 0; i < rungs.size(); i++) {
            show(rungs.get(i), shown.branches().get(i));
        }
        requestLayout();
    }

    private static void show(final Rung rung, final LampsOnAFeed.Branch branch) {
        rung.amps().setText(branch.amps());
        rung.amps().getStyleClass().setAll("label", branch.on() ? Styles.STRONG : Styles.SOFT);
        rung.contact().close(branch.on());
        dress(rung.feed(), branch.passing() > 0);
        dress(rung.back(), branch.passing() > 0);
        List.of(rung.out(), rung.in(), rung.end()).forEach(each -> dress(each, branch.on()));
    }

    /** A conductor without current is drawn in dashes. */
    private static void dress(final Line line, final boolean carries) {
        line.getStyleClass().setAll(carries ? Styles.FEED_LINE : Styles.IDLE_LINE);
    }

    @Override
    double height(final double width) {
        return FIRST + step(width) * (rungs.size() - 1) + LAMP / 2 + 0.6;
    }

    /** From rung to rung: with room between names of several lines. */
    private double step(final double width) {
        return rungs.stream()
                .mapToDouble(rung -> high(rung.box(), width) + BETWEEN)
                .reduce(STEP, Math::max);
    }

    private double high(final CheckBox box, final double width) {
        box.applyCss();
        return Math.ceil(box.prefHeight((left(width) - 1.2) * em())) / em();
    }

    private static double left(final double width) {
        return Math.min(16, width * 0.42);
    }

    @Override
    void draw(final double width) {
        final double left = left(width);
        final double step = step(width);
        final double right = width - 1;
        source(left, right);
        double above = TOP;
        for (int i = 0; i < rungs.size(); i++) {
            final double y = FIRST + i * step;
            draw(rungs.get(i), model.now().getValue().branches().get(i), left, right, above, y);
            above = y;
        }
    }

    private void source(final double left, final double right) {
        final double middle = (left + right) / 2;
        final double thick = thickness(model.now().getValue().feed());
        lay(source, left, TOP, middle - 1.2, TOP);
        lay(sourceBack, middle + 1.2, TOP, right, TOP);
        thick(source, thick);
        thick(sourceBack, thick);
        lay(battery, middle - 1.2, TOP - 1, 2.4, 2);
        lay(fuse, (left + middle) / 2 - 1.2, TOP - 0.45, 2.4, 0.9);
        put(fuseWord, Pos.TOP_CENTER, (left + middle) / 2, TOP - 1.9);
        put(volts, Pos.TOP_LEFT, middle + 1.6, TOP - 1.9);
        put(feedAmps, Pos.TOP_RIGHT, left - 0.8, TOP - 0.8);
    }

    private void draw(
            final Rung rung,
            final LampsOnAFeed.Branch branch,
            final double left,
            final double right,
            final double above,
            final double y) {
        final double load = left + (right - left) * 0.62;
        final double contact = left + (right - left) * 0.14;
        final double thin = thickness(branch.current());
        final double thick = thickness(branch.passing());
        lay(rung.feed(), left, above, left, y);
        lay(rung.back(), right, above, right, y);
        thick(rung.feed(), thick);
        thick(rung.back(), thick);
        lay(rung.out(), left, y, contact, y);
        lay(rung.contact(), contact, y - 0.8, 2.4, 1.6);
        lay(rung.in(), contact + 2.4, y, load, y);
        lay(rung.end(), load + LAMP, y, right, y);
        List.of(rung.out(), rung.in(), rung.end()).forEach(each -> thick(each, thin));
        lay(rung.load(), load, y - LAMP / 2, LAMP, LAMP);
        put(rung.amps(), Pos.TOP_CENTER, (contact + 2.4 + load) / 2, y - 1.7);
        final double boxHigh = Math.ceil(rung.box().prefHeight((left - 1.2) * em())) / em();
        lay(rung.box(), 0, y - boxHigh / 2, left - 1.2, boxHigh);
    }

    private double thickness(final double amps) {
        return THINNEST + (THICKEST - THINNEST) * amps / model.now().getValue().mostCurrent();
    }
}
