package wireworthy.vehicle;

/** What became of reading a file. */
public sealed interface VehicleRead {
    /** All of it was read. */
    record Whole(Vehicle vehicle) implements VehicleRead {}

    /**
     * It was left as it is.
     *
     * @param line where, from 1; 0 for the file as a whole
     * @param message what is wrong, without a full stop
     * @param remedy what to do, without a full stop
     */
    record Refused(String file, int line, String message, String remedy) implements VehicleRead {
        /** For people: "heron.json, line 12: ... . ... ." */
        public String text() {
            final String where = line == 0 ? file : file + ", line " + line;
            return where + ": " + message + ". " + remedy + ".";
        }
    }
}
