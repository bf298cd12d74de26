package wireworthy.window;

import java.util.List;
import java.util.stream.IntStream;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import wireworthy.facts.FactTable;
import wireworthy.facts.Provenance;
import wireworthy.window.parts.FixedText;
import wireworthy.window.parts.PlainTable;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/**
 * A table with what it holds for, where it comes from and what to mind. Its columns share the room
 * there is; where they have none side by side, each row is told one figure under the other.
 */
final class TablePage extends VBox {
    private final FactTable table;
    private final TableColumns columns;
    private final VBox rows = new VBox();
    private final Label ruler = new Label();
    private double room;

    TablePage(final FactTable table) {
        this.table = table;
        columns = TableColumns.of(table);
        rows.setAccessibleText(WindowTexts.of("tables.table", "title", table.title()));
        // The columns follow the page, which may yet get narrower by a scroll bar.
        rows.setMinWidth(0);
        ruler.setVisible(false);
        ruler.setManaged(false);
        getStyleClass().add(Styles.PAGE);
        getChildren()
                .addAll(
                        ruler,
                        Texts.title(TableColumns.text(table.title())),
                        Texts.paragraph(TableColumns.text(table.scope())),
                        Texts.soft(
                                WindowTexts.of(
                                        "tables.source",
                                        "source",
                                        table.source().title(),
                                        "standing",
                                        standing(table))),
                        rows);
        table.notes().forEach(note -> getChildren().add(Texts.soft(TableColumns.text(note))));
        rows.widthProperty().subscribe(any -> fit());
        ruler.fontProperty().subscribe(any -> fit());
    }

    /** How the figures of a table came into the program, in words. */
    static String standing(final FactTable table) {
        final Provenance provenance = table.source().provenance();
        return provenance == Provenance.READ ? WindowTexts.of("tables.read") : provenance.words();
    }

    /** In whole text sizes, so that not every pixel of another width makes the table anew. */
    private void fit() {
        final double now = Math.floor(rows.getWidth() / ruler.getFont().getSize());
        if (now > 0 && now != room) {
            room = now;
            final List<Double> widths = columns.in(room);
            rows.getChildren().setAll(widths.isEmpty() ? stacked() : List.of(sideBySide(widths)));
        }
    }

    private PlainTable sideBySide(final List<Double> widths) {
        final PlainTable grid = new PlainTable();
        if (columns.close(room)) {
            grid.getStyleClass().add(Styles.CLOSE);
        }
        grid.row(true, cells(table.columns(), widths, true));
        table.rows().forEach(row -> grid.row(false, cells(row, widths, false)));
        return grid;
    }

    private List<PlainTable.Cell> cells(
            final List<String> texts, final List<Double> widths, final boolean head) {
        return IntStream.range(0, texts.size())
                .mapToObj(i -> cell(texts.get(i), i, widths.get(i), head))
                .toList();
    }

    private PlainTable.Cell cell(
            final String plain, final int column, final double width, final boolean head) {
        final boolean figures = columns.all().get(column).figures();
        final String text = TableColumns.text(plain);
        final FixedText label =
                new FixedText(head && figures ? TableColumns.flush(text, width) : text, width);
        if (figures) {
            label.getStyleClass().add(Styles.FIGURE_TEXT);
        }
        return new PlainTable.Cell(label, figures);
    }

    private List<Node> stacked() {
        return table.rows().stream().<Node>map(this::told).toList();
    }

    private VBox told(final List<String> row) {
        final VBox told = new VBox();
        told.getStyleClass().add(Styles.TABLE_CELL);
        for (int i = 0; i < row.size(); i++) {
            if (!row.get(i).isEmpty()) {
                told.getChildren().add(line(i, row.get(i)));
            }
        }
        told.getChildren().get(0).getStyleClass().add(Styles.STRONG);
        return told;
    }

    private Label line(final int column, final String value) {
        final Label line =
                new Label(
                        WindowTexts.of(
                                "tables.value",
                                "column",
                                TableColumns.text(table.columns().get(column)),
                                "value",
                                TableColumns.text(value)));
        line.setWrapText(true);
        line.setAccessibleRole(AccessibleRole.TEXT);
        return line;
    }
}
