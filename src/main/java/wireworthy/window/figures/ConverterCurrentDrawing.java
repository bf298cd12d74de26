package wireworthy.window.figures;

import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import wireworthy.window.parts.Styles;

/** Battery, converter, appliance: conductors as thick as their currents, and where watts go. */
final class ConverterCurrentDrawing extends Drawing {
    private static final double SUM = 3.8;
    private static final double MIDDLE = 8.2;
    private static final double BOX = 4.4;
    private static final double THINNEST = 0.12;
    private static final double THICKEST = 1.5;
    private static final double POWER = 13.4;
    private static final double BAR = 1.5;
    private static final double LINE = 1.4;

    private final ObservableValue<ConverterCurrent.Shown> now;
    private final Label batterySide = text(Styles.SOFT, Styles.SMALL);
    private final Label mainsSide = text(Styles.SOFT, Styles.SMALL);
    private final Label batteryAmps = text(Styles.LARGE);
    private final Label mainsAmps = text(Styles.LARGE);
    private final Line thick = line(Styles.FEED_LINE);
    private final Line thin = line(Styles.FEED_LINE);
    private final Symbol battery = add(Symbol.battery());
    private final Symbol converter = add(Symbol.inverter());
    private final Symbol appliance = add(Symbol.load());
    private final Label efficiency = text(Styles.STRONG);
    private final Region delivered = area(Styles.BAR, Styles.CHOSEN);
    private final Region heat = area(Styles.HEAT);
    private final Label deliveredWords = text(Styles.SMALL);
    private final Label heatWords = text(Styles.SMALL);
    private final Label taken = text(Styles.SMALL, Styles.STRONG);
    private final Label batteryWord = text(Styles.SOFT, Styles.SMALL);
    private final Label applianceWord = text(Styles.SOFT, Styles.SMALL);
    private final Label formula = paragraph(Styles.SOFT, Styles.SMALL);
    private final Label numbers = text(Styles.LARGE);

    ConverterCurrentDrawing(final ObservableValue<ConverterCurrent.Shown> now) {
        this.now = now;
        batteryWord.setText(FigureTexts.of("thins.battery"));
        applianceWord.setText(FigureTexts.of("converter.appliance"));
        heatWords.setText(FigureTexts.of("converter.heat"));
        now.addListener((of, before, shown) -> show(shown));
        show(now.getValue());
    }

    private void show(final ConverterCurrent.Shown shown) {
        batterySide.setText(FigureTexts.of("converter.battery-side", "volts", shown.volts()));
        mainsSide.setText(FigureTexts.of("converter.mains-side"));
        batteryAmps.setText(shown.batteryAmps());
        mainsAmps.setText(shown.mainsAmps());
        efficiency.setText(FigureTexts.of("converter.share", "efficiency", shown.percent()));
        deliveredWords.setText(
                FigureTexts.of("converter.delivered", "watts", shown.deliveredWatts()));
        formula.setText(shown.supply().formula());
        numbers.setText(shown.supply().numbers());
        taken.setText(FigureTexts.of("converter.taken", "watts", shown.takenWatts()));
        requestLayout();
    }

    @Override
    double height(final double width) {
        return POWER + BAR + 1.6 + further(width);
    }

    /** How much further down all stands where the formula takes a second line. */
    private double further(final double width) {
        return Math.max(0, high(formula, width) - LINE);
    }

    @Override
    void draw(final double width) {
        final double middle = width / 2;
        final double left = middle - BOX / 2;
        final double right = middle + BOX / 2;
        lay(formula, 0, 0, width, high(formula, width));
        final double down = further(width) * em();
        getChildren().forEach(part -> part.setTranslateY(part == formula ? 0 : down));
        put(numbers, Pos.TOP_LEFT, 0, 1.4);
        conductors(left, right, width);
        lay(battery, 0, MIDDLE - 1.2, 2.4, 2.4);
        lay(converter, left, MIDDLE - 1.4, BOX, 2.8);
        lay(appliance, width - 3, MIDDLE - 0.8, 3, 1.6);
        put(batteryWord, Pos.TOP_LEFT, 0, MIDDLE + 1.5);
        put(applianceWord, Pos.TOP_RIGHT, width, MIDDLE + 1.5);
        put(efficiency, Pos.TOP_CENTER, middle, MIDDLE + 1.5);
        final double fromBattery = (2.4 + left) / 2;
        final double toAppliance = (right + width - 3) / 2;
        put(batterySide, Pos.TOP_CENTER, fromBattery, SUM);
        put(batteryAmps, Pos.TOP_CENTER, fromBattery, SUM + 1.4);
        put(mainsSide, Pos.TOP_CENTER, toAppliance, SUM);
        put(mainsAmps, Pos.TOP_CENTER, toAppliance, SUM + 1.4);
        power(width);
    }

    private void conductors(final double left, final double right, final double width) {
        lay(thick, 2.4, MIDDLE, left, MIDDLE);
        lay(thin, right, MIDDLE, width - 3, MIDDLE);
        thick(thick, thickness(now.getValue().supply().value()));
        thick(thin, thickness(now.getValue().mains()));
    }

    private double thickness(final double amps) {
        return THINNEST + (THICKEST - THINNEST) * amps / now.getValue().mostCurrent();
    }

    private void power(final double width) {
        final ConverterCurrent.Shown shown = now.getValue();
        final double used = width * shown.delivered() / shown.mostTaken();
        final double all = width * shown.taken() / shown.mostTaken();
        lay(delivered, 0, POWER, used, BAR);
        lay(heat, used, POWER, all - used, BAR);
        put(taken, Pos.TOP_LEFT, 0, POWER - 1.6);
        put(deliveredWords, Pos.TOP_LEFT, 0, POWER + BAR + 0.1);
        final double end = Math.max(used, width(deliveredWords) + 1);
        put(heatWords, Pos.TOP_LEFT, end, POWER + BAR + 0.1);
    }
}
