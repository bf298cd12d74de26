package wireworthy.window.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import wireworthy.rules.Quantity;
import wireworthy.window.parts.KeptFlow;
import wireworthy.window.parts.Styles;

/**
 * Entries side by side, as many as the room allows; those of a row stand on the lower edge of what
 * is typed.
 */
final class EntryFields extends KeptFlow implements Refreshing {
    EntryFields(final List<Entry> entries) {
        getStyleClass().add(Styles.ENTRY_FIELDS);
        getChildren().setAll(entries.stream().map(EntryFields::field).toList());
    }

    /** Entries that take more room than a figure: a name. */
    static EntryFields wide(final Entry... entries) {
        final EntryFields fields = new EntryFields(List.of(entries));
        fields.getStyleClass().add(Styles.WIDE);
        return fields;
    }

    /** The control that fits an entry. */
    static Node field(final Entry entry) {
        if (!entry.names().isEmpty()) {
            return new EntryChoice(entry);
        }
        final EntryField field = new EntryField(entry);
        if (entry.quantity().equals(Optional.of(Quantity.AVAILABLE_SECTIONS))) {
            field.getStyleClass().add(Styles.WIDE);
        }
        return field;
    }

    @Override
    public void refresh() {
        Refresh.all(getChildren());
    }

    /**
     * Entries beside each other.
     *
     * @param above how far the highest reaches over the common edge
     * @param height of the row
     */
    private record Row(List<Node> parts, double above, double height) {}

    @Override
    protected double heightOfRows(final double width) {
        final List<Row> rows = rows(width < 0 ? getPrefWrapLength() : width);
        return rows.stream().mapToDouble(Row::height).sum()
                + Math.max(0, rows.size() - 1) * getVgap();
    }

    @Override
    protected void layoutChildren() {
        double y = 0;
        for (final Row row : rows(getWidth())) {
            double x = 0;
            for (final Node part : row.parts()) {
                final double wide = wide(part, getWidth());
                final double top = snapPositionY(y + row.above() - above(part, wide));
                part.resizeRelocate(snapPositionX(x), top, wide, part.prefHeight(wide));
                x += wide + getHgap();
            }
            y += row.height() + getVgap();
        }
    }

    private List<Row> rows(final double width) {
        final List<Row> rows = new ArrayList<>();
        List<Node> row = new ArrayList<>();
        double x = 0;
        for (final Node part : getManagedChildren()) {
            final double wide = wide(part, width);
            if (!row.isEmpty() && x + wide > width) {
                rows.add(row(row, width));
                row = new ArrayList<>();
                x = 0;
            }
            row.add(part);
            x += wide + getHgap();
        }
        if (!row.isEmpty()) {
            rows.add(row(row, width));
        }
        return rows;
    }

    private static Row row(final List<Node> parts, final double width) {
        double above = 0;
        double below = 0;
        for (final Node part : parts) {
            final double wide = wide(part, width);
            final double its = above(part, wide);
            above = Math.max(above, its);
            below = Math.max(below, part.prefHeight(wide) - its);
        }
        return new Row(parts, above, above + below);
    }

    private static double wide(final Node part, final double width) {
        return Math.min(width, part.prefWidth(-1));
    }

    private static double above(final Node part, final double width) {
        return part instanceof EntryBox box ? box.above(width) : part.prefHeight(width);
    }
}
