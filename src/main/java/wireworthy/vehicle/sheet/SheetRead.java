package wireworthy.vehicle.sheet;

/** What became of reading a spreadsheet. */
public sealed interface SheetRead {
    /** All of it was read. */
    record Whole(Sheet sheet) implements SheetRead {}

    /**
     * Nothing of it was taken.
     *
     * @param message what is wrong, without a full stop
     * @param remedy what to do, without a full stop
     */
    record Refused(String message, String remedy) implements SheetRead {}
}
