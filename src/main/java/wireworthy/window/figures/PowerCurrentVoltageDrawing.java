package wireworthy.window.figures;

import java.util.List;
import java.util.stream.Stream;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import wireworthy.window.parts.Styles;

/** A bar of what follows for each voltage; the chosen one is copper and carries its sum. */
final class PowerCurrentVoltageDrawing extends Drawing {
    private static final double TOP = 3.8;
    private static final double ROW = 2.4;
    private static final double BAR = 1.1;
    private static final double NAMES = 4.2;
    private static final double AMPS = 5;

    private final ObservableValue<PowerCurrentVoltage.Shown> now;
    private final Label formula = text(Styles.SOFT, Styles.SMALL);
    private final Label numbers = text(Styles.LARGE);
    private final List<Row> rows;

    private record Row(Label volts, Region track, Region bar, Label amps) {
        void show(final PowerCurrentVoltage.AtVoltage at, final String bars) {
            volts.setText(at.volts());
            amps.setText(bars);
            Stream.of(volts, amps, bar).forEach(each -> mark(each.getStyleClass(), at.chosen()));
        }

        private static void mark(final List<String> styles, final boolean chosen) {
            styles.remove(Styles.CHOSEN);
            if (chosen) {
                styles.add(Styles.CHOSEN);
            }
        }
    }

    PowerCurrentVoltageDrawing(final ObservableValue<PowerCurrentVoltage.Shown> now) {
        this.now = now;
        rows = now.getValue().voltages().stream().map(each -> row()).toList();
        now.addListener((of, before, shown) -> show(shown));
        show(now.getValue());
    }

    private Row row() {
        return new Row(
                text(Styles.BAR_NAME), area(Styles.TRACK), area(Styles.BAR), text(Styles.BAR_NAME));
    }

    private void show(final PowerCurrentVoltage.Shown shown) {
        formula.setText(shown.chosen().line().formula());
        numbers.setText(shown.chosen().line().numbers());
        for (int i = 0; i < rows.size(); i++) {
            final PowerCurrentVoltage.AtVoltage at = shown.voltages().get(i);
            rows.get(i).show(at, shown.barText(at));
        }
        requestLayout();
    }

    @Override
    double height(final double width) {
        return TOP + ROW * rows.size();
    }

    @Override
    void draw(final double width) {
        put(formula, Pos.TOP_LEFT, 0, 0);
        put(numbers, Pos.TOP_LEFT, 0, 1.4);
        for (int i = 0; i < rows.size(); i++) {
            draw(rows.get(i), now.getValue().voltages().get(i), TOP + i * ROW, width);
        }
    }

    private void draw(
            final Row row,
            final PowerCurrentVoltage.AtVoltage at,
            final double y,
            final double width) {
        final double room = width - NAMES - AMPS;
        final double length = room * now.getValue().bar(at) / now.getValue().most();
        put(row.volts(), Pos.TOP_RIGHT, NAMES - 0.6, y);
        lay(row.track(), NAMES, y + 0.25, room, BAR);
        lay(row.bar(), NAMES, y + 0.25, length, BAR);
        put(row.amps(), Pos.TOP_LEFT, NAMES + length + 0.5, y);
    }
}
