package wireworthy.window;

import java.util.List;
import java.util.stream.IntStream;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import wireworthy.facts.FactTable;
import wireworthy.facts.Provenance;
import wireworthy.window.parts.PlainTable;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** A table with what it holds for, where it comes from and what to mind. */
final class TablePage extends VBox {
    private final FactTable table;
    private final List<Boolean> figures;

    TablePage(final FactTable table) {
        this.table = table;
        figures = IntStream.range(0, table.columns().size()).mapToObj(this::isFigure).toList();
        getStyleClass().add(Styles.PAGE);
        getChildren()
                .addAll(
                        Texts.title(Pretty.units(table.title())),
                        Texts.paragraph(Pretty.units(table.scope())),
                        Texts.soft("Source: " + table.source().title() + ". " + standing(table)),
                        sideways());
        table.notes().forEach(note -> getChildren().add(Texts.soft(Pretty.units(note))));
    }

    /** How the figures of a table came into the program, in words. */
    static String standing(final FactTable table) {
        final Provenance provenance = table.source().provenance();
        return provenance == Provenance.READ ? "read in a published text" : provenance.words();
    }

    /** A column of figures, some of them perhaps not given. */
    private boolean isFigure(final int column) {
        return table.rows().stream()
                .map(row -> row.get(column))
                .allMatch(cell -> cell.isEmpty() || Pretty.isFigure(cell));
    }

    private ScrollPane sideways() {
        final PlainTable grid = new PlainTable();
        grid.row(true, cells(table.columns()));
        table.rows().forEach(row -> grid.row(false, cells(row)));
        final ScrollPane scroll = new ScrollPane(grid);
        scroll.getStyleClass().add(Styles.PAGE_SCROLL);
        scroll.setVbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFitToHeight(true);
        scroll.setMinHeight(USE_PREF_SIZE);
        scroll.setAccessibleText("Table: " + table.title());
        return scroll;
    }

    private List<PlainTable.Cell> cells(final List<String> texts) {
        return IntStream.range(0, texts.size())
                .mapToObj(i -> cell(texts.get(i), figures.get(i)))
                .toList();
    }

    private static PlainTable.Cell cell(final String text, final boolean figure) {
        final Label label = new Label(Pretty.units(text));
        label.setWrapText(true);
        label.getStyleClass().add(figure ? Styles.FIGURE_TEXT : Styles.WORDS_TEXT);
        return new PlainTable.Cell(label, figure);
    }
}
