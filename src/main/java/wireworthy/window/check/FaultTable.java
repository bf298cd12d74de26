package wireworthy.window.check;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import javafx.scene.Node;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.vehicle.check.CheckedVehicle;
import wireworthy.vehicle.check.FuseFault;
import wireworthy.window.parts.FixedText;
import wireworthy.window.parts.PlainTable;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/**
 * A short circuit behind each fuse, as a table.
 *
 * @param rows the name of the fuse, what could flow, what it can break, its voltage
 */
record FaultTable(List<List<String>> rows) {
    private static final List<String> HEADS =
            List.of("fault.fuse", "fault.current", "fault.breaks", "fault.volts");
    private static final double NAME = 12;
    private static final double FIGURE = 6.5;

    static FaultTable of(final CheckedVehicle checked) {
        return new FaultTable(checked.faults().stream().map(FaultTable::row).toList());
    }

    private static List<String> row(final FuseFault fault) {
        final String name =
                fault.circuit().isEmpty() ? CheckTexts.of("label.main-fuse") : fault.circuit();
        return List.of(
                name,
                text(fault.current(), Dimension.CURRENT, "not-yet"),
                text(fault.breakingCapacity(), Dimension.CURRENT, "maker"),
                text(fault.ratedVoltage(), Dimension.VOLTAGE, "maker"));
    }

    private static String text(
            final OptionalDouble value, final Dimension dimension, final String otherwise) {
        return value.isEmpty()
                ? CheckTexts.of(otherwise)
                : Texts.kept(FigureText.of(value.getAsDouble(), dimension));
    }

    List<Node> drawn() {
        final PlainTable table = new PlainTable();
        table.row(true, cells(HEADS.stream().map(CheckTexts::of).toList()));
        rows.forEach(row -> table.row(false, cells(row)));
        return List.of(
                Texts.subtitle(CheckTexts.of("whole.faults")),
                Texts.soft(CheckTexts.of("whole.faults.what")),
                WholeResults.sideways(table, CheckTexts.of("whole.faults")));
    }

    private static List<PlainTable.Cell> cells(final List<String> texts) {
        return Stream.concat(
                        Stream.of(new PlainTable.Cell(new FixedText(texts.get(0), NAME), false)),
                        texts.stream().skip(1).map(FaultTable::figure))
                .toList();
    }

    private static PlainTable.Cell figure(final String text) {
        final FixedText cell = new FixedText(text, FIGURE);
        cell.getStyleClass().add(Styles.FIGURE_TEXT);
        return new PlainTable.Cell(cell, true);
    }
}
