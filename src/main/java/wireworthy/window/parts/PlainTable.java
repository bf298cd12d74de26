package wireworthy.window.parts;

import java.util.List;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;

/** A table to read: hairlines between its rows, figures to the right. */
public final class PlainTable extends GridPane {
    /** What stands in a cell, and whether it is a figure. */
    public record Cell(Region content, boolean figure) {}

    public PlainTable() {
        getStyleClass().add(Styles.PLAIN_TABLE);
    }

    /** Adds a row under those there are. */
    public void row(final boolean head, final List<Cell> cells) {
        final int row = getRowCount();
        for (int i = 0; i < cells.size(); i++) {
            add(framed(cells.get(i), head), i, row);
        }
    }

    private static StackPane framed(final Cell cell, final boolean head) {
        final StackPane frame = new StackPane(cell.content());
        frame.getStyleClass().add(head ? Styles.TABLE_HEAD : Styles.TABLE_CELL);
        if (cell.figure()) {
            frame.getStyleClass().add(Styles.FIGURE);
            cell.content().setMaxWidth(USE_PREF_SIZE);
        }
        setHalignment(frame, HPos.LEFT);
        setValignment(frame, VPos.TOP);
        setFillHeight(frame, true);
        setHgrow(frame, Priority.SOMETIMES);
        return frame;
    }
}
