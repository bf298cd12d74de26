package wireworthy.window.figures;

import java.util.List;
import java.util.stream.Stream;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.scene.text.TextAlignment;
import wireworthy.window.parts.Styles;

/**
 * A row for the circuit as it is and one for each way out: the drop as a share of the limit. The
 * bar stands beside the names, or under them where they leave it no room.
 */
final class FourWaysDrawing extends Drawing {
    private static final int ROWS = 5;
    private static final double TOP = 3.4;
    private static final double HEAD = 1.4;
    private static final double ROW = 3;
    private static final double BAR = 1.1;
    private static final double BAR_ROW = 1.8;
    private static final double NAMES = 13;
    private static final double FIGURES = 9.6;
    private static final double COPPER = 6;
    private static final double LEAST_BAR = 7;
    private static final double UNDER = 0.6;

    /** What the usual verdict takes, so that nothing jumps. */
    private static final double TWO_LINES = 3.2;

    /** The bars end at so many limits, or further on where the drop does. */
    private static final double LIMITS_SHOWN = 3;

    private static final double HEADROOM = 1.05;

    private final ObservableValue<FourWays.Shown> now;
    private final List<Row> rows = Stream.generate(this::row).limit(ROWS).toList();
    private final Label limitWord = text(Styles.SMALL, Styles.SOFT);
    private final Label dropWord = text(Styles.SMALL, Styles.SOFT);
    private final Label copperWord = text(Styles.SMALL, Styles.SOFT);
    private final VerdictLine verdict = add(new VerdictLine());

    private record Row(
            Label name,
            Label change,
            Region track,
            Region bar,
            Line limit,
            Label drop,
            Label percent,
            Label copper) {
        void show(final Way way) {
            name.setText(way.name());
            change.setText(way.change());
            drop.setText((way.within() ? "✓ " : "✗ ") + way.dropVolts());
            drop.getStyleClass()
                    .setAll(
                            "label",
                            Styles.STRONG,
                            way.within() ? Styles.SOUND_TEXT : Styles.UNSOUND_TEXT);
            percent.setText(way.percent());
            copper.setText(way.copperNumber());
        }

        Stream<Node> parts() {
            return Stream.of(name, change, track, bar, limit, drop, percent, copper);
        }
    }

    FourWaysDrawing(final ObservableValue<FourWays.Shown> now) {
        this.now = now;
        dropWord.setText(FigureTexts.of("ways.drop"));
        copperWord.setTextAlignment(TextAlignment.RIGHT);
        copperWord.setText(FigureTexts.of("ways.copper"));
        now.addListener((of, before, shown) -> show(shown));
        show(now.getValue());
    }

    private Row row() {
        return new Row(
                text(Styles.STRONG),
                text(Styles.SMALL, Styles.SOFT),
                area(Styles.TRACK),
                area(Styles.BAR, Styles.CHOSEN),
                line(Styles.LIMIT_LINE),
                text(),
                text(Styles.SMALL, Styles.SOFT),
                text(Styles.SMALL));
    }

    private static Stream<Way> all(final FourWays.Shown shown) {
        return Stream.concat(Stream.of(shown.asItIs()), shown.ways().stream());
    }

    private void show(final FourWays.Shown shown) {
        final List<Way> ways = all(shown).toList();
        for (int i = 0; i < ROWS; i++) {
            final boolean used = i < ways.size();
            rows.get(i).parts().forEach(part -> part.setVisible(used));
            if (used) {
                rows.get(i).show(ways.get(i));
            }
        }
        limitWord.setText(FigureTexts.of("ways.limit", "percent", shown.limitPercent()));
        verdict.say(shown.asItIs().within(), shown.verdict());
        requestLayout();
    }

    @Override
    double height(final double width) {
        return foot(names(width)) + Math.max(TWO_LINES, high(verdict, width)) + 0.4;
    }

    /** Where the rows end; always room for all, so that nothing jumps. */
    private static double foot(final double names) {
        return TOP + ROWS * row(names) + UNDER;
    }

    private static double row(final double names) {
        return names > 0 ? ROW : ROW + BAR_ROW;
    }

    /** How wide the names stand beside the bars; 0 where those have no room beside them. */
    private double names(final double width) {
        final double names =
                rows.stream()
                        .flatMap(row -> Stream.of(row.name(), row.change()))
                        .mapToDouble(label -> width(label) + UNDER)
                        .reduce(NAMES, Math::max);
        return width - FIGURES - copper() - names >= LEAST_BAR ? names : 0;
    }

    private double copper() {
        return Math.max(COPPER, width(copperWord) + UNDER);
    }

    @Override
    void draw(final double width) {
        final double from = names(width);
        final boolean beside = from > 0;
        final double to = beside ? width - FIGURES - copper() : width;
        put(dropWord, Pos.TOP_RIGHT, width - copper(), HEAD);
        put(copperWord, Pos.TOP_RIGHT, width, HEAD - 1.3);
        final List<Way> ways = all(now.getValue()).toList();
        for (int i = 0; i < ways.size(); i++) {
            final double y = TOP + i * row(from);
            words(rows.get(i), y, width);
            bar(rows.get(i), ways.get(i), y + (beside ? 0.25 : ROW - 0.15), from, to);
        }
        final double under = TOP + ways.size() * row(from) - 0.35;
        put(limitWord, Pos.TOP_CENTER, from + (to - from) / limitsShown(), beside ? HEAD : under);
        verdict.lay(em(), width, foot(from) + 0.2);
    }

    private void words(final Row row, final double y, final double width) {
        put(row.name(), Pos.TOP_LEFT, 0, y - 0.3);
        put(row.change(), Pos.TOP_LEFT, 0, y + 1);
        put(row.drop(), Pos.TOP_RIGHT, width - copper(), y - 0.3);
        put(row.percent(), Pos.TOP_RIGHT, width - copper(), y + 1);
        put(row.copper(), Pos.TOP_RIGHT, width, y);
    }

    private void bar(
            final Row row, final Way way, final double y, final double from, final double to) {
        final double limit = from + (to - from) / limitsShown();
        lay(row.track(), from, y, to - from, BAR);
        lay(row.bar(), from, y, (limit - from) * way.drop() / way.limit(), BAR);
        lay(row.limit(), limit, y - 0.2, limit, y + BAR + 0.2);
    }

    private double limitsShown() {
        final Way most = now.getValue().asItIs();
        return Math.max(LIMITS_SHOWN, HEADROOM * most.drop() / most.limit());
    }
}
