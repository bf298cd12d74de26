package wireworthy.window.figures;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;
import wireworthy.window.parts.Verdict;

/** A bar for what each load takes in a day, and for what comes in and what the bank holds. */
final class DaysEnergyDrawing extends Drawing {
    private static final double NUMBERS = 5.4;
    private static final double ROW = 2.1;
    private static final double BAR = 1.1;
    private static final double MOST_LABEL = 19;

    private final DaysEnergy model;
    private final List<CheckBox> boxes = new ArrayList<>();
    private final List<Row> loads = new ArrayList<>();
    private final Line under = line(Styles.HAIRLINE);
    private final Row out = row(Styles.CHOSEN);
    private final Row sun = row(Styles.SOUND);
    private final Row engine = row(Styles.SOUND);
    private final Row bank = row(Styles.BAR);
    private final VerdictLine verdict = add(new VerdictLine());
    private final Label lasts = across(new Label(), Styles.SOFT);

    private record Row(Label name, Region bar, Label number) {}

    DaysEnergyDrawing(final DaysEnergy model) {
        this.model = model;
        model.switches().forEach(this::load);
        out.name().setText(FigureTexts.of("day.out.all"));
        sun.name().setText(FigureTexts.of("day.in.sun"));
        engine.name().setText(FigureTexts.of("day.in.engine"));
        model.now().addListener((of, before, shown) -> show(shown));
        show(model.now().getValue());
    }

    private void load(final LoadSwitch load) {
        final CheckBox box = add(new CheckBox(Texts.kept(load.text())), Styles.SWITCH);
        box.setWrapText(true);
        box.selectedProperty().bindBidirectional(load.on());
        boxes.add(box);
        loads.add(row(Styles.CHOSEN));
    }

    private Row row(final String style) {
        return new Row(text(), area(Styles.BAR, style), text(Styles.STRONG));
    }

    private void show(final DaysEnergy.Shown shown) {
        for (int i = 0; i < loads.size(); i++) {
            loads.get(i).number().setText(shown.loads().get(i).wattHours());
        }
        out.number().setText(DaysEnergy.Shown.wattHours(shown.out()));
        sun.number().setText(DaysEnergy.Shown.wattHours(shown.sun()));
        engine.number().setText(DaysEnergy.Shown.wattHours(shown.engine()));
        bank.number().setText(DaysEnergy.Shown.wattHours(shown.usable()));
        bank.name().setText(FigureTexts.of("day.usable", "share", shown.share()));
        lasts.setText(Texts.kept(shown.further()));
        verdict.say(shown.covered() ? Verdict.SOUND : Verdict.CAUTION, shown.verdict());
        requestLayout();
    }

    @Override
    double height(final double width) {
        return foot(width) + stacked(width, verdict, lasts);
    }

    private double foot(final double width) {
        return boxes.stream().mapToDouble(box -> high(box, width)).sum() + 4 * ROW + 1.2;
    }

    private static double labels(final double width) {
        return Math.min(MOST_LABEL, width * 0.45);
    }

    private double high(final CheckBox box, final double width) {
        box.applyCss();
        return Math.max(ROW, Math.ceil(box.prefHeight(labels(width) * em())) / em());
    }

    @Override
    void draw(final double width) {
        final DaysEnergy.Shown shown = model.now().getValue();
        double y = 0;
        for (int i = 0; i < boxes.size(); i++) {
            final double high = high(boxes.get(i), width);
            lay(boxes.get(i), 0, y, labels(width), high);
            row(loads.get(i), shown.loads().get(i).energy(), width, y + (high - ROW) / 2);
            y += high;
        }
        lay(under, 0, y + 0.2, width, y + 0.2);
        row(out, shown.out(), width, y + 0.4);
        row(sun, shown.sun(), width, y + 0.4 + ROW);
        row(engine, shown.engine(), width, y + 0.4 + 2 * ROW);
        row(bank, shown.usable(), width, y + 0.4 + 3 * ROW);
        stack(width, foot(width), verdict, lasts);
    }

    private void row(final Row row, final double energy, final double width, final double y) {
        final double from = labels(width) + 0.6;
        final double room = width - NUMBERS - from;
        final double middle = y + ROW / 2;
        put(row.name(), Pos.TOP_LEFT, 0, y + 0.25);
        lay(row.bar(), from, middle - BAR / 2, room * energy / most(), BAR);
        put(row.number(), Pos.TOP_RIGHT, width, y + 0.25);
    }

    /** The longest bar. */
    private double most() {
        final DaysEnergy.Shown shown = model.now().getValue();
        return Math.max(
                Math.max(shown.usable(), shown.out()), Math.max(shown.sun(), shown.engine()));
    }
}
