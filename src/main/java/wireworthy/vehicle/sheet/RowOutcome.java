package wireworthy.vehicle.sheet;

import java.util.List;

/**
 * What became of a row.
 *
 * @param line of the file where it begins, from 1
 * @param circuit index of the circuit it went into; less than nothing where it went into none
 * @param cells what was understood in it
 * @param reason why it was not taken, or what of it can't be read; empty otherwise
 */
public record RowOutcome(int line, Kind kind, int circuit, List<CellRead> cells, String reason) {
    /** What became of it. */
    public enum Kind {
        /** Nothing stands in it. */
        EMPTY,
        /** A title, or a row that stands before the headings. */
        BEFORE,
        HEADINGS,
        /** All that the mapping uses was read. */
        TAKEN,
        /** It was taken, but something in it can't be read; the text is kept as it is. */
        IN_PART,
        /** It was not taken. */
        LEFT_OUT
    }

    public RowOutcome {
        cells = List.copyOf(cells);
    }

    static RowOutcome without(final SheetRow row, final Kind kind, final String reason) {
        return new RowOutcome(row.line(), kind, -1, List.of(), reason);
    }
}
