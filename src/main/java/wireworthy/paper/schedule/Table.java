package wireworthy.paper.schedule;

import java.util.List;
import wireworthy.paper.Block;

/**
 * A table with a head; columns named with a leading {@code >} hold figures, set to the right. The
 * last part of a column's key is its class in the style sheet.
 */
final class Table {
    private static final String RIGHT = ">";

    private final Block rows;
    private final List<String> columns;

    /**
     * An empty table.
     *
     * @param columns keys of the words at the head of each
     */
    Table(final Block page, final String... columns) {
        this.columns = List.of(columns);
        final Block table = page.add("table", "tight");
        final Block head = table.add("thead").add("tr");
        for (final String column : columns) {
            head.say("th", look(column), Words.of(column.replace(RIGHT, "")));
        }
        rows = table.add("tbody");
    }

    /** A row, a text for each column. */
    void row(final String... cells) {
        final Block row = rows.add("tr");
        for (int i = 0; i < cells.length; i++) {
            row.say("td", look(columns.get(i)), cells[i]);
        }
    }

    private static String look(final String column) {
        final String name = column.substring(column.lastIndexOf('.') + 1);
        return (column.startsWith(RIGHT) ? "number column-" : "words column-") + name;
    }
}
