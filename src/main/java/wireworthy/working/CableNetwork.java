package wireworthy.working;

import java.util.List;

/**
 * Cables that feed several places from one source: a line, branches or rings.
 *
 * @param supply V, of the source without load
 * @param internalResistance ohm, of the source
 * @param stretches in the order given
 * @param loads in the order given
 */
public record CableNetwork(
        double supply,
        double internalResistance,
        List<Stretch> stretches,
        List<NetworkLoad> loads) {
    /** The name of the place where the source is. */
    public static final String SOURCE = "source";

    public CableNetwork {
        stretches = List.copyOf(stretches);
        loads = List.copyOf(loads);
    }

    CableNetwork withStretches(final List<Stretch> others) {
        return new CableNetwork(supply, internalResistance, others, loads);
    }

    /**
     * A pair of conductors between two places.
     *
     * @param resistance ohm, out and back
     * @param section m2 of one conductor; NaN where only a resistance is known
     * @param sum how the resistance comes about, in numbers
     */
    public record Stretch(String from, String to, double resistance, double section, String sum) {
        Stretch withResistance(final double other) {
            return new Stretch(from, to, other, section, sum);
        }
    }
}
