package wireworthy.window.check;

import static wireworthy.rules.Quantity.*;

import wireworthy.record.SumsInUse;
import wireworthy.rules.Dimension;
import wireworthy.rules.FigureText;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Load;

/** A circuit as it begins: one load to describe, and what the person's sums go by. */
final class NewCircuit {
    private NewCircuit() {}

    /** Only what is other than usual is written down, so that the form says what holds here. */
    static Circuit named(final String name, final SumsInUse sums) {
        final SumsInUse usual = SumsInUse.USUAL;
        Circuit circuit = Circuit.named(name).plus(Load.named(""));
        if (!sums.cableTable().equals(usual.cableTable())) {
            circuit = circuit.withGiven(CABLE_TABLE, sums.cableTable());
        }
        if (sums.dropLimit() != usual.dropLimit()) {
            circuit =
                    circuit.withGiven(
                            DROP_LIMIT, FigureText.inFiles(sums.dropLimit(), Dimension.SHARE));
        }
        if (sums.margin() != usual.margin()) {
            circuit =
                    circuit.withGiven(MARGIN, FigureText.inFiles(sums.margin(), Dimension.FACTOR));
        }
        return circuit;
    }
}
