package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.*;

import java.util.List;
import java.util.OptionalDouble;
import wireworthy.rules.Dimension;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Entries;
import wireworthy.vehicle.Understood;
import wireworthy.vehicle.Vehicle;
import wireworthy.working.Solver;

/**
 * What a vehicle is fed from, as far as its circuits need to know.
 *
 * @param volts of the supply, as text; empty where not known
 * @param atBattery A of a short circuit at the battery, behind the main fuse; empty where not known
 * @param atBoard A of a short circuit at the fuse board, behind a circuit's fuse
 */
record Source(String volts, OptionalDouble atBattery, OptionalDouble atBoard) {
    private static final List<Quantity> BANK = List.of(BATTERY_VOLTAGE, IN_SERIES);
    private static final List<Quantity> LOOP = List.of(ONE_WAY_LENGTH, SECTION, RETURN);

    static Source of(final Vehicle vehicle, final Solver solver) {
        final Entries<Quantity> supply = vehicle.supply().given();
        final String volts = volts(supply, solver);
        return new Source(
                volts,
                fault(volts, supply, Entries.none(), solver),
                fault(volts, supply, vehicle.main().given(), solver));
    }

    /** The voltage typed, or else that of the bank. */
    static String volts(final Entries<Quantity> supply, final Solver solver) {
        final String typed = supply.text(SUPPLY_VOLTAGE);
        if (!typed.isBlank()) {
            return Understood.of(SUPPLY_VOLTAGE, typed) instanceof Understood.Figure ? typed : "";
        }
        return Sums.of(solver, new Givens().of(supply, BANK), List.of(BANK_VOLTAGE), Entries.none())
                .value(BANK_VOLTAGE)
                .stream()
                .mapToObj(bank -> Givens.exact(bank, Dimension.VOLTAGE))
                .findFirst()
                .orElse("");
    }

    private static OptionalDouble fault(
            final String volts,
            final Entries<Quantity> supply,
            final Entries<Quantity> cable,
            final Solver solver) {
        final Givens givens = new Givens().of(supply, List.of(INTERNAL_RESISTANCE)).of(cable, LOOP);
        if (!volts.isEmpty()) {
            givens.typed(SUPPLY_VOLTAGE, volts);
        }
        return Sums.of(solver, givens, List.of(SHORT_CIRCUIT_CURRENT), Entries.none())
                .value(SHORT_CIRCUIT_CURRENT);
    }

    void voltsInto(final Givens givens) {
        givens.volts(volts);
    }
}
