package wireworthy.bench;

import java.util.List;
import java.util.stream.IntStream;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Feed;
import wireworthy.vehicle.Heron;
import wireworthy.vehicle.Vehicle;

/** A vehicle as large as one may be: the circuits of the Heron, again and again. */
final class SixtyCircuits {
    static final int COUNT = 60;

    private SixtyCircuits() {}

    static Vehicle vehicle() {
        final List<Circuit> nine = Heron.vehicle().circuits();
        return Heron.vehicle()
                .withCircuits(
                        IntStream.range(0, COUNT)
                                .mapToObj(i -> numbered(nine.get(i % nine.size()), i / nine.size()))
                                .toList());
    }

    /** Taps stay on the circuit of their own nine. */
    private static Circuit numbered(final Circuit circuit, final int round) {
        final Feed feed = circuit.feed();
        final Circuit named = circuit.renamed(circuit.name() + " " + (round + 1));
        return feed.isTap()
                ? named.fedFrom(new Feed(feed.circuit() + " " + (round + 1), feed.ownFuse()))
                : named;
    }
}
