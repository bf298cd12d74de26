package wireworthy.facts;

import java.util.List;

/**
 * A published table as a reader sees it.
 *
 * @param id the name it is called by
 * @param scope what the figures hold for
 * @param source where they were published; where rows differ, the weakest standing, and a last
 *     column tells the rows apart
 * @param notes whole sentences
 * @param columns headings, each with its unit
 * @param rows as many cells in each as there are headings; an empty cell means not given
 */
public record FactTable(
        String id,
        String title,
        String scope,
        Source source,
        List<String> notes,
        List<String> columns,
        List<List<String>> rows) {

    /** Heading of the column that gives each row its own provenance. */
    static final String PROVENANCE = "Where the figure comes from";

    public FactTable {
        notes = List.copyOf(notes);
        columns = List.copyOf(columns);
        rows = rows.stream().map(List::copyOf).toList();
    }

    /** The same table in the language in use; for reading only. */
    public FactTable said() {
        return TableWords.of(this);
    }

    /** The cell of a row under a heading. */
    String cell(final List<String> row, final String heading) {
        final int column = columns.indexOf(heading);
        if (column < 0) {
            throw new IllegalArgumentException("Table " + id + " has no column " + heading);
        }
        return row.get(column);
    }

    /** The number under a heading. */
    double number(final List<String> row, final String heading) {
        return Double.parseDouble(cell(row, heading));
    }

    /** The source of one row: the table's, with the row's own provenance where it has one. */
    Source sourceOf(final List<String> row) {
        return columns.contains(PROVENANCE)
                ? new Source(source.title(), Provenance.opening(cell(row, PROVENANCE)))
                : source;
    }
}
