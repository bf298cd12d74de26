package wireworthy.window;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import wireworthy.facts.FactTable;
import wireworthy.facts.Provenance;
import wireworthy.window.parts.FixedText;
import wireworthy.window.parts.PlainTable;
import wireworthy.window.parts.Styles;
import wireworthy.window.parts.Texts;

/** A table with what it holds for, where it comes from and what to mind. */
final class TablePage extends VBox {
    private static final double CHARACTER = 0.54;
    private static final double NARROWEST = 3.5;
    private static final double WIDEST = 16;

    private final FactTable table;
    private final List<Column> columns;

    /** Whether a column holds figures, and its width in text sizes. */
    private record Column(boolean figures, double width) {}

    TablePage(final FactTable table) {
        this.table = table;
        columns = IntStream.range(0, table.columns().size()).mapToObj(this::column).toList();
        getStyleClass().add(Styles.PAGE);
        getChildren()
                .addAll(
                        Texts.title(Pretty.units(table.title())),
                        Texts.paragraph(Pretty.units(table.scope())),
                        Texts.soft(
                                WindowTexts.of(
                                        "tables.source",
                                        "source",
                                        table.source().title(),
                                        "standing",
                                        standing(table))),
                        sideways());
        table.notes().forEach(note -> getChildren().add(Texts.soft(Pretty.units(note))));
    }

    /** How the figures of a table came into the program, in words. */
    static String standing(final FactTable table) {
        final Provenance provenance = table.source().provenance();
        return provenance == Provenance.READ ? WindowTexts.of("tables.read") : provenance.words();
    }

    private Column column(final int place) {
        final String heading = Pretty.units(table.columns().get(place));
        final List<String> cells = table.rows().stream().map(row -> row.get(place)).toList();
        final IntStream words = Stream.of(heading.split(" ", -1)).mapToInt(String::length);
        final int longest =
                IntStream.concat(cells.stream().mapToInt(String::length), words).max().orElse(0);
        // A heading of many words gets two or three lines, not one for each word.
        final double characters = Math.max(longest, heading.length() / 2.5);
        final double width = Math.min(WIDEST, Math.max(NARROWEST, characters * CHARACTER));
        return new Column(cells.stream().allMatch(TablePage::isFigure), width);
    }

    /** A figure, or one that is not given. */
    private static boolean isFigure(final String cell) {
        return cell.isEmpty() || Pretty.isFigure(cell);
    }

    private ScrollPane sideways() {
        final PlainTable grid = new PlainTable();
        grid.row(true, cells(table.columns()));
        table.rows().forEach(row -> grid.row(false, cells(row)));
        final ScrollPane scroll = new ScrollPane(grid);
        scroll.getStyleClass().add(Styles.PAGE_SCROLL);
        scroll.setVbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setMinHeight(USE_PREF_SIZE);
        scroll.setAccessibleText(WindowTexts.of("tables.table", "title", table.title()));
        return scroll;
    }

    private List<PlainTable.Cell> cells(final List<String> texts) {
        return IntStream.range(0, texts.size())
                .mapToObj(i -> cell(texts.get(i), columns.get(i)))
                .toList();
    }

    private static PlainTable.Cell cell(final String text, final Column column) {
        final FixedText label = new FixedText(Texts.kept(Pretty.units(text)), column.width());
        if (column.figures()) {
            label.getStyleClass().add(Styles.FIGURE_TEXT);
        }
        return new PlainTable.Cell(label, column.figures());
    }
}
