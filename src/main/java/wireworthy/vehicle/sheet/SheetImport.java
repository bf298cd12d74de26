package wireworthy.vehicle.sheet;

import static wireworthy.rules.Quantity.SUPPLY_VOLTAGE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wireworthy.facts.StandardSizes;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Understood;
import wireworthy.vehicle.Vehicle;
import wireworthy.vehicle.check.VehicleChecker;

/**
 * The circuits of a spreadsheet. Every row of it is accounted for.
 *
 * @param rows in the order of the file
 * @param circuits in the order of their first row
 * @param volts of the supply they are made for, as text; empty where the file does not say
 */
public record SheetImport(
        Mapping mapping, List<RowOutcome> rows, List<Circuit> circuits, String volts) {
    public SheetImport {
        rows = List.copyOf(rows);
        circuits = List.copyOf(circuits);
    }

    /** Takes a spreadsheet in by a mapping; never throws. */
    public static SheetImport of(final Sheet sheet, final Mapping mapping) {
        final Taking taking =
                new Taking(
                        mapping,
                        new Cells(mapping, decimals(sheet, mapping)),
                        Title.volts(sheet, mapping.headingRow()));
        for (int i = 0; i < sheet.rows().size(); i++) {
            taking.row(sheet.rows().get(i), i);
        }
        return new SheetImport(mapping, taking.rows(), taking.circuits(), taking.volts());
    }

    private static Decimals decimals(final Sheet sheet, final Mapping mapping) {
        return mapping.decimalCommas() ? Decimals.COMMA : Decimals.of(sheet);
    }

    /** The rows that were not taken, or not whole. */
    public List<RowOutcome> troubles() {
        return rows.stream()
                .filter(
                        row ->
                                row.kind() == RowOutcome.Kind.LEFT_OUT
                                        || row.kind() == RowOutcome.Kind.IN_PART)
                .toList();
    }

    /**
     * The vehicle with these circuits after its own, as many as it may have. Circuits it has
     * already keep the voltage they run at; else it is that of the file.
     */
    public Vehicle into(final Vehicle vehicle) {
        final List<Circuit> all = new ArrayList<>(vehicle.circuits());
        all.addAll(circuits);
        return fed(vehicle)
                .withCircuits(all.subList(0, Math.min(all.size(), Vehicle.MOST_CIRCUITS)));
    }

    private Vehicle fed(final Vehicle vehicle) {
        final boolean keeps = otherVolts(vehicle).isPresent() && !vehicle.circuits().isEmpty();
        return volts.isEmpty() || keeps || same(volts, VehicleChecker.volts(vehicle))
                ? vehicle
                : vehicle.withSupply(vehicle.supply().withGiven(SUPPLY_VOLTAGE, volts));
    }

    /** The voltage a vehicle is fed at, where the file says another one. */
    public Optional<String> otherVolts(final Vehicle vehicle) {
        return Optional.of(VehicleChecker.volts(vehicle))
                .filter(its -> !volts.isEmpty() && !its.isEmpty() && !same(volts, its));
    }

    static boolean same(final String one, final String other) {
        return Understood.of(SUPPLY_VOLTAGE, one) instanceof Understood.Figure its
                && Understood.of(SUPPLY_VOLTAGE, other) instanceof Understood.Figure others
                && StandardSizes.same(its.read().value(), others.read().value());
    }

    static String understood(final String volts) {
        return Understood.of(SUPPLY_VOLTAGE, volts).text();
    }

    /** How many of these circuits a vehicle has no room for. */
    public int tooMany(final Vehicle vehicle) {
        return Math.max(0, vehicle.circuits().size() + circuits.size() - Vehicle.MOST_CIRCUITS);
    }
}
