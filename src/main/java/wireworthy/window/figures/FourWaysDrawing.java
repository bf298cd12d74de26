package wireworthy.window.figures;

import java.util.List;
import java.util.stream.Stream;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import wireworthy.window.parts.Styles;

/** A row for the circuit as it is and one for each way out: the drop as a share of the limit. */
final class FourWaysDrawing extends Drawing {
    private static final int ROWS = 5;
    private static final double TOP = 2.2;
    private static final double ROW = 3;
    private static final double BAR = 1.1;
    private static final double NAMES = 13;
    private static final double FIGURES = 9.6;
    private static final double COPPER = 7.2;

    /** The bars end at so many limits, or further on where the drop does. */
    private static final double LIMITS_SHOWN = 3;

    private static final double HEADROOM = 1.05;

    private final ObservableValue<FourWays.Shown> now;
    private final List<Row> rows = Stream.generate(this::row).limit(ROWS).toList();
    private final Line limit = line(Styles.LIMIT_LINE);
    private final Label limitWord = text(Styles.SMALL, Styles.SOFT);
    private final Label dropWord = text(Styles.SMALL, Styles.SOFT);
    private final Label copperWord = text(Styles.SMALL, Styles.SOFT);
    private final VerdictLine verdict = add(new VerdictLine());

    private record Row(
            Label name,
            Label change,
            Region track,
            Region bar,
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
            copper.setText(way.copperText());
        }

        Stream<Region> parts() {
            return Stream.of(name, change, track, bar, drop, percent, copper);
        }
    }

    FourWaysDrawing(final ObservableValue<FourWays.Shown> now) {
        this.now = now;
        limitWord.setText(FigureTexts.of("limit"));
        dropWord.setText(FigureTexts.of("ways.drop"));
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
        verdict.say(shown.asItIs().within(), shown.verdict());
        requestLayout();
    }

    @Override
    double height(final double width) {
        return TOP + ROWS * ROW + 2.6;
    }

    @Override
    void draw(final double width) {
        final double end = width - FIGURES - COPPER;
        final double mark = NAMES + (end - NAMES) / limitsShown();
        put(limitWord, Pos.TOP_CENTER, mark, 0.2);
        put(dropWord, Pos.TOP_RIGHT, width - COPPER, 0.2);
        put(copperWord, Pos.TOP_RIGHT, width, 0.2);
        final List<Way> ways = all(now.getValue()).toList();
        for (int i = 0; i < ways.size(); i++) {
            draw(rows.get(i), ways.get(i), TOP + i * ROW, width);
        }
        limit.toFront();
        lay(limit, mark, TOP - 0.4, mark, TOP + ways.size() * ROW - 0.8);
        verdict.lay(em(), width, TOP + ROWS * ROW + 0.2);
    }

    private void draw(final Row row, final Way way, final double y, final double width) {
        final double room = width - FIGURES - COPPER - NAMES;
        final double share = way.drop() / way.limit() / limitsShown();
        put(row.name(), Pos.TOP_LEFT, 0, y - 0.3);
        put(row.change(), Pos.TOP_LEFT, 0, y + 1);
        lay(row.track(), NAMES, y + 0.25, room, BAR);
        lay(row.bar(), NAMES, y + 0.25, room * share, BAR);
        put(row.drop(), Pos.TOP_RIGHT, width - COPPER, y - 0.3);
        put(row.percent(), Pos.TOP_RIGHT, width - COPPER, y + 1);
        put(row.copper(), Pos.TOP_RIGHT, width, y);
    }

    private double limitsShown() {
        final Way most = now.getValue().asItIs();
        return Math.max(LIMITS_SHOWN, HEADROOM * most.drop() / most.limit());
    }
}
