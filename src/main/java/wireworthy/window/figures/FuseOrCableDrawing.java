package wireworthy.window.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import wireworthy.facts.FuseTimes;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** Time against current, both by powers of ten: the fuse as a band, the cable as a line. */
final class FuseOrCableDrawing extends Drawing {
    private static final int SHORTEST = -2;
    private static final int LONGEST = 3;
    private static final double LEFT = 4.2;
    private static final double TOP = 1.8;
    private static final double HIGH = 13;
    private static final double ROW = 1.6;
    private static final double SIGN = 1.4;
    private static final double LEGEND_AT = LEFT + SIGN + 0.6;
    private static final double AXIS_NAME = 1.4;

    private final FuseOrCable model;
    private final List<Mark> seconds = new ArrayList<>();
    private final List<Mark> amps = new ArrayList<>();
    private final List<Region> band = new ArrayList<>();
    private final List<Line> limits = new ArrayList<>();
    private final Line bound = line(Styles.IDLE_LINE);
    private final Line boundSign = line(Styles.IDLE_LINE);
    private final Label boundWords = paragraph(Styles.SOFT, Styles.SMALL);
    private final Label timeWord = text(Styles.SOFT, Styles.SMALL);
    private final Label currentWord = text(Styles.SOFT, Styles.SMALL);
    private final Line cable = line(Styles.HEAT_LINE);
    private final Line current = line(Styles.MARK);
    private final Label currentWords = text(Styles.STRONG, Styles.SMALL);
    private final Circle cableJoint = add(new Circle(), Styles.RING);
    private final Legend fuseLegend = named();
    private final Legend cableLegend = named();
    private final Region fuseSign = area(Styles.FUSE_BAND);
    private final Line fuseLimit = line(Styles.MARK);
    private final Line cableSign = line(Styles.HEAT_LINE);
    private final VerdictLine verdict = add(new VerdictLine());
    private final Label sources =
            across(new Label(FigureTexts.of("fault.sources")), Styles.SOFT, Styles.SMALL);
    private double width;

    private record Mark(int power, Line line, Label label) {}

    private record Legend(Label name, Label time) {}

    FuseOrCableDrawing(final FuseOrCable model) {
        this.model = model;
        IntStream.rangeClosed(SHORTEST, LONGEST)
                .forEach(power -> seconds.add(mark(power, Dimension.SHORT_TIME)));
        IntStream.rangeClosed(model.leastPower(), model.mostPower())
                .forEach(power -> amps.add(mark(power, Dimension.CURRENT)));
        model.now().getValue().limits().forEach(each -> band.add(area(Styles.FUSE_BAND)));
        model.now().getValue().limits().forEach(each -> limits.add(line(Styles.MARK)));
        boundWords.setText(Texts.kept(FigureTexts.of("fault.bound")));
        timeWord.setText(FigureTexts.of("fault.time"));
        currentWord.setText(FigureTexts.of("fault.amps"));
        List.of(bound, cable, current, currentWords, cableJoint).forEach(Node::toFront);
        model.now().addListener((of, before, shown) -> show(shown));
        show(model.now().getValue());
    }

    private Mark mark(final int power, final Dimension dimension) {
        final Mark mark = new Mark(power, line(Styles.GRID_LINE), text(Styles.SOFT, Styles.SMALL));
        mark.label().setText(FigureText.of(Math.pow(10, power), dimension));
        return mark;
    }

    private Legend named() {
        return new Legend(text(), text(Styles.STRONG));
    }

    private void show(final Fault shown) {
        currentWords.setText(FigureTexts.of("fault.current", "amps", shown.amps()));
        fuseLegend.name().setText(FigureTexts.of("fault.fuse-opens", "amps", shown.fuseAmps()));
        fuseLegend.time().setText(shown.fuseTime());
        cableLegend.name().setText(FigureTexts.of("fault.cable-hot", "cable", shown.cableName()));
        cableLegend.time().setText(shown.cableTime());
        verdict.say(shown.verdict(), shown.says());
        requestLayout();
    }

    @Override
    double height(final double wide) {
        return foot(wide) + stacked(wide, verdict, sources);
    }

    private static double legendTop() {
        return TOP + HIGH + 1.9 + AXIS_NAME;
    }

    private double foot(final double wide) {
        return legendTop() + 2 * row(wide) + boundHigh(wide) + 0.5;
    }

    private double boundHigh(final double wide) {
        return Math.max(ROW, high(boundWords, wide - LEGEND_AT));
    }

    /** A row of the legend: the time under the name where both have no room side by side. */
    private double row(final double wide) {
        return wide - LEGEND_AT >= names() + 1 + times() ? ROW : 2 * ROW;
    }

    private double names() {
        return Math.max(width(fuseLegend.name()), width(cableLegend.name()));
    }

    private double times() {
        return Math.max(width(fuseLegend.time()), width(cableLegend.time()));
    }

    @Override
    void draw(final double wide) {
        width = wide;
        final Fault shown = model.now().getValue();
        grid();
        band(shown);
        cable(shown);
        final double x = x(shown.current());
        lay(current, x, TOP, x, TOP + HIGH);
        put(currentWords, Pos.TOP_CENTER, Math.max(x, LEFT + width(currentWords) / 2), 0.1);
        legend();
        stack(wide, foot(wide), verdict, sources);
    }

    private void grid() {
        for (final Mark mark : seconds) {
            final double y = y(Math.pow(10, mark.power()));
            lay(mark.line(), LEFT, y, width, y);
            put(mark.label(), Pos.TOP_RIGHT, LEFT - 0.5, y - 0.75);
        }
        for (final Mark mark : amps) {
            final double x = x(Math.pow(10, mark.power()));
            lay(mark.line(), x, TOP, x, TOP + HIGH);
            put(mark.label(), Pos.TOP_CENTER, x, TOP + HIGH + 0.2);
        }
        lay(bound, LEFT, y(Fault.LONGEST_ADIABATIC), width, y(Fault.LONGEST_ADIABATIC));
        thick(bound, 0.08);
        put(timeWord, Pos.TOP_RIGHT, LEFT - 0.5, 0.1);
        put(currentWord, Pos.TOP_RIGHT, width, TOP + HIGH + 0.2 + AXIS_NAME);
    }

    /** Between two limits the longest time of the lower share and the shortest of the higher. */
    private void band(final Fault shown) {
        final List<FuseTimes.Row> rows = shown.limits();
        for (int i = 0; i < rows.size(); i++) {
            final boolean last = i == rows.size() - 1;
            final double from = x(rows.get(i).share() * shown.fuse());
            final double to = last ? width : x(rows.get(i + 1).share() * shown.fuse());
            final double top = y(rows.get(i).longest().orElse(Double.MAX_VALUE));
            final double foot = last ? TOP + HIGH : y(rows.get(i + 1).shortest().orElse(0));
            lay(band.get(i), from, top, to - from, foot - top);
            lay(limits.get(i), from, top, from, y(rows.get(i).shortest().orElse(0)));
        }
    }

    private void cable(final Fault shown) {
        final double slow = Fault.LONGEST_ADIABATIC;
        final double fast = Math.pow(10, SHORTEST);
        final double least = Math.sqrt(shown.heat() / slow);
        final double most =
                Math.min(Math.sqrt(shown.heat() / fast), Math.pow(10, model.mostPower()));
        cable.setVisible(least < most);
        lay(cable, x(least), y(slow), x(most), y(shown.heat() / (most * most)));
        cableJoint.setVisible(shown.cable().isPresent());
        cableJoint.setCenterX(x(shown.current()) * em());
        cableJoint.setCenterY(y(shown.cable().orElse(slow)) * em());
        cableJoint.setRadius(0.4 * em());
    }

    private void legend() {
        final double y = legendTop();
        final double row = row(width);
        final double second = y + row;
        final double third = second + row;
        lay(fuseSign, LEFT, y + 0.2, SIGN, 1);
        lay(fuseLimit, LEFT, y + 0.2, LEFT, y + 1.2);
        lay(cableSign, LEFT, second + 0.4, LEFT + SIGN, second + 1.1);
        lay(boundSign, LEFT, third + 0.7, LEFT + SIGN, third + 0.7);
        thick(boundSign, 0.08);
        final double times = row > ROW ? 0 : LEGEND_AT + names() + 1 + times();
        legend(fuseLegend, y, times);
        legend(cableLegend, second, times);
        lay(boundWords, LEGEND_AT, third, width - LEGEND_AT, boundHigh(width));
    }

    /**
     * @param times where the times end; 0 where they stand under the names
     */
    private void legend(final Legend legend, final double y, final double times) {
        put(legend.name(), Pos.TOP_LEFT, LEGEND_AT, y);
        if (times > 0) {
            put(legend.time(), Pos.TOP_RIGHT, times, y);
        } else {
            put(legend.time(), Pos.TOP_LEFT, LEGEND_AT, y + ROW - 0.2);
        }
    }

    private double x(final double current) {
        final double decades = model.mostPower() - model.leastPower();
        final double at = (Math.log10(current) - model.leastPower()) / decades;
        return LEFT + within(at) * (width - LEFT - 1);
    }

    private static double y(final double time) {
        return TOP + HIGH * (1 - within((Math.log10(time) - SHORTEST) / (LONGEST - SHORTEST)));
    }

    private static double within(final double share) {
        return Math.max(0, Math.min(1, share));
    }
}
