package wireworthy.window.check;

import static wireworthy.rules.Quantity.*;

import wireworthy.record.SumsInUse;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.rules.Quantity;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Load;

/** A circuit as it begins: one load to describe, and what the person's sums go by. */
final class NewCircuit {
    private NewCircuit() {}

    /** Only what is other than usual is written down, so that the form says what holds here. */
    static Circuit named(final String name, final SumsInUse sums) {
        return by(Circuit.named(name).plus(Load.named("")), sums);
    }

    /** A circuit that goes by the person's sums wherever it says nothing of its own. */
    static Circuit by(final Circuit before, final SumsInUse sums) {
        final SumsInUse usual = SumsInUse.USUAL;
        Circuit circuit = before;
        if (!sums.cableTable().equals(usual.cableTable()) && !says(before, CABLE_TABLE)) {
            circuit = circuit.withGiven(CABLE_TABLE, sums.cableTable());
        }
        if (sums.dropLimit() != usual.dropLimit() && !says(before, DROP_LIMIT)) {
            circuit =
                    circuit.withGiven(
                            DROP_LIMIT, FigureText.inFiles(sums.dropLimit(), Dimension.SHARE));
        }
        if (sums.margin() != usual.margin() && !says(before, MARGIN)) {
            circuit =
                    circuit.withGiven(MARGIN, FigureText.inFiles(sums.margin(), Dimension.FACTOR));
        }
        return circuit;
    }

    private static boolean says(final Circuit circuit, final Quantity quantity) {
        return circuit.part().given().has(quantity);
    }
}
