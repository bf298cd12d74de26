package wireworthy.window.figures;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** Bars that get shorter, factor by factor, each with its source; what remains is the ceiling. */
final class DeratedAmpacityDrawing extends Drawing {
    private static final int ROWS = 4;
    private static final double NAMES = 13.5;
    private static final double AMPS = 5.2;
    private static final double BAR = 1.1;
    private static final double SOURCE = 1.6;
    private static final double UNDER = 1.5;
    private static final double GAP = 0.6;
    private static final double LEAST_BAR = 10;

    private final ObservableValue<DeratedAmpacity.Shown> now;
    private final List<Row> rows = new ArrayList<>();
    private final VerdictLine verdict = add(new VerdictLine());

    private record Row(
            Label name, Label times, Region track, Region bar, Label amps, Label source) {
        void show(final String said, final String factor, final String left, final String from) {
            name.setText(said);
            times.setText(factor);
            amps.setText(left);
            source.setText(Texts.kept(from));
        }

        void see(final boolean used) {
            List.of(name, times, track, bar, amps, source).forEach(part -> part.setVisible(used));
        }
    }

    DeratedAmpacityDrawing(final ObservableValue<DeratedAmpacity.Shown> now) {
        this.now = now;
        for (int i = 0; i < ROWS; i++) {
            rows.add(row());
        }
        now.addListener((of, before, shown) -> show(shown));
        show(now.getValue());
    }

    private Row row() {
        return new Row(
                text(Styles.STRONG),
                text(),
                area(Styles.TRACK),
                area(Styles.BAR, Styles.CHOSEN),
                text(Styles.STRONG),
                paragraph(Styles.SMALL, Styles.SOFT));
    }

    private void show(final DeratedAmpacity.Shown shown) {
        rows.get(0)
                .show(FigureTexts.of("derated.table"), "", shown.tableAmps(), shown.tableSource());
        for (int i = 1; i < ROWS; i++) {
            final boolean used = i <= shown.factors().size();
            rows.get(i).see(used);
            if (used) {
                final Factor factor = shown.factors().get(i - 1);
                rows.get(i)
                        .show(
                                factor.name(),
                                "× " + factor.text(),
                                factor.leftAmps(),
                                factor.source());
            }
        }
        verdict.say(shown.usable(), shown.verdict());
        requestLayout();
    }

    private int used() {
        return now.getValue().factors().size() + 1;
    }

    private double high(final Row row, final double width, final double names) {
        final double words = high(row.source(), width - names);
        return SOURCE + words + GAP + (names > 0 ? 0 : UNDER);
    }

    /** How wide the names stand beside bar and source; 0 where those have no room beside them. */
    private double names(final double width) {
        final double names =
                rows.stream().mapToDouble(row -> width(row.name()) + GAP).reduce(NAMES, Math::max);
        return width - AMPS - names >= LEAST_BAR ? names : 0;
    }

    @Override
    double height(final double width) {
        final double names = names(width);
        double high = 2.4;
        for (int i = 0; i < used(); i++) {
            high += high(rows.get(i), width, names);
        }
        return high;
    }

    @Override
    void draw(final double width) {
        final double names = names(width);
        double y = 0;
        for (int i = 0; i < used(); i++) {
            draw(rows.get(i), amps(i), y, width, names);
            y += high(rows.get(i), width, names);
        }
        verdict.lay(em(), width, y + 0.3);
    }

    private double amps(final int row) {
        final DeratedAmpacity.Shown shown = now.getValue();
        return row == 0 ? shown.inTable() : shown.factors().get(row - 1).left();
    }

    private void draw(
            final Row row,
            final double amps,
            final double y,
            final double width,
            final double names) {
        final boolean beside = names > 0;
        final double room = width - names - (beside ? AMPS : 0);
        final double bar = beside ? y : y + UNDER;
        put(row.name(), Pos.TOP_LEFT, 0, y);
        if (beside) {
            put(row.times(), Pos.TOP_LEFT, 0, y + 1.5);
        } else {
            put(row.times(), Pos.TOP_RIGHT, width - AMPS, y);
        }
        lay(row.track(), names, bar + 0.25, room, BAR);
        lay(row.bar(), names, bar + 0.25, room * amps / now.getValue().most(), BAR);
        put(row.amps(), Pos.TOP_RIGHT, width, y);
        lay(row.source(), names, bar + SOURCE, width - names, high(row.source(), width - names));
    }
}
