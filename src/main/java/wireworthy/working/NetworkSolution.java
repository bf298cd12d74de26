package wireworthy.working;

import java.util.Map;

/**
 * A network of cables worked.
 *
 * @param voltages V at each place, by name
 * @param current A out of the source
 */
public record NetworkSolution(CableNetwork network, Map<String, Double> voltages, double current) {
    /** V at a place. */
    public double at(final String place) {
        return voltages.getOrDefault(place, Double.NaN);
    }

    /** V at the terminals of the source while all loads are on. */
    public double terminal() {
        return at(CableNetwork.SOURCE);
    }

    /** V lost between the source without load and a load. */
    public double drop(final NetworkLoad load) {
        return network.supply() - at(load.at());
    }

    /** W that warm a stretch. */
    public double heat(final CableNetwork.Stretch stretch) {
        final double lost = at(stretch.from()) - at(stretch.to());
        return lost * lost / stretch.resistance();
    }

    /** A through a stretch, from its first place to its second. */
    public double through(final CableNetwork.Stretch stretch) {
        return (at(stretch.from()) - at(stretch.to())) / stretch.resistance();
    }

    /** W that warm all the cables. */
    public double heat() {
        return network.stretches().stream().mapToDouble(this::heat).sum();
    }
}
