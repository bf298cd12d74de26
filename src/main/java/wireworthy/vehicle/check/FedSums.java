package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.*;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import wireworthy.vehicle.Circuit;

/** The sums of all circuits in the order they feed each other: what reaches beyond one of them. */
final class FedSums {
    private final FeedTree tree;
    private final List<CircuitSums> all;
    private final List<FuseWindow> windows;
    private final List<Optional<FuseFault>> faults;

    FedSums(final FeedTree tree, final List<CircuitSums> all) {
        this.tree = tree;
        this.all = all;
        this.windows = IntStream.range(0, all.size()).mapToObj(this::windowOf).toList();
        this.faults = IntStream.range(0, all.size()).mapToObj(this::faultOf).toList();
    }

    CircuitSums own(final int index) {
        return all.get(index);
    }

    FeedTree tree() {
        return tree;
    }

    Circuit circuit(final int index) {
        return own(index).input().circuit();
    }

    /** Which fuses fit at its beginning, for all cable that hangs behind. */
    FuseWindow window(final int index) {
        return windows.get(index);
    }

    private FuseWindow windowOf(final int index) {
        return own(index)
                .sums()
                .window(ceiling(index), circuit(index).part().given().has(FUSE_SERIES));
    }

    /** A short circuit behind the circuit's own fuse; empty where it has none. */
    Optional<FuseFault> fault(final int index) {
        return faults.get(index);
    }

    private Optional<FuseFault> faultOf(final int index) {
        final CircuitSums own = all.get(index);
        return hasOwnFuse(index)
                ? Optional.of(
                        Faults.of(
                                index,
                                circuit(index).name(),
                                own.input().fault(),
                                own.sums(),
                                window(index),
                                own.heating()))
                : Optional.empty();
    }

    private boolean hasOwnFuse(final int index) {
        return circuit(index).feed().ownFuse() || tree.feeder(index).isEmpty();
    }

    /** The ampacity of the weakest cable behind the fuse; empty where one is not known. */
    private OptionalDouble ceiling(final int index) {
        OptionalDouble weakest = own(index).sums().value(FUSE_CEILING);
        for (final int tap : tree.taps(index)) {
            if (weakest.isPresent() && !circuit(tap).feed().ownFuse()) {
                weakest = smaller(weakest.getAsDouble(), ceiling(tap));
            }
        }
        return weakest;
    }

    private static OptionalDouble smaller(final double one, final OptionalDouble other) {
        return other.isEmpty() ? other : OptionalDouble.of(Math.min(one, other.getAsDouble()));
    }

    /** The fuse that protects a cable: its own, or that of the cable it is tapped off. */
    OptionalDouble protectingFuse(final int index) {
        final boolean own = circuit(index).feed().ownFuse() || tree.feeder(index).isEmpty();
        return own ? window(index).inUse() : protectingFuse(tree.feeder(index).getAsInt());
    }

    /** V lost from the fuse board on; empty where not known. */
    OptionalDouble dropFromBoard(final int index) {
        final OptionalDouble own = ownDrop(index);
        if (own.isEmpty() || tree.feeder(index).isEmpty()) {
            return own;
        }
        final OptionalDouble before = dropFromBoard(tree.feeder(index).getAsInt());
        return before.isEmpty()
                ? before
                : OptionalDouble.of(own.getAsDouble() + before.getAsDouble());
    }

    /** In a network, up to the load that is worst off. */
    OptionalDouble ownDrop(final int index) {
        final CircuitSums own = all.get(index);
        return own.network().map(NetworkSums::largestDrop).orElseGet(() -> own.sums().value(DROP));
    }

    /** The same once the cable is warm; empty where nothing tells of its own. */
    OptionalDouble warmFromBoard(final int index) {
        final OptionalDouble own = all.get(index).warm();
        final OptionalDouble before = warmBefore(index);
        return own.isEmpty() || before.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(own.getAsDouble() + before.getAsDouble());
    }

    /**
     * V lost before its cable begins, once what feeds it is warm: nothing at the fuse board, empty
     * where not known. A cable that no standard tells of counts as it is in cold copper.
     */
    OptionalDouble warmBefore(final int index) {
        if (tree.feeder(index).isEmpty()) {
            return OptionalDouble.of(0);
        }
        final int feeder = tree.feeder(index).getAsInt();
        final OptionalDouble cold = ownDrop(feeder);
        final OptionalDouble before = warmBefore(feeder);
        return cold.isEmpty() || before.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        before.getAsDouble()
                                + Math.max(cold.getAsDouble(), all.get(feeder).warm().orElse(0)));
    }
}
