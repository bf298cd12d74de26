package wireworthy.vehicle.sheet;

/**
 * A cell and what it was understood as.
 *
 * @param typed as it stands in the file
 * @param kept as it goes into the vehicle: with its unit
 * @param understood for people; empty where it can't be read
 * @param problem why it can't be read; empty where it can
 */
public record CellRead(
        Column column, String typed, String kept, String understood, String problem) {}
