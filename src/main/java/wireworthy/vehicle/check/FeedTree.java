package wireworthy.vehicle.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import wireworthy.vehicle.Circuit;
import wireworthy.vehicle.Vehicle;

/** Which circuit is tapped off which, by index. */
final class FeedTree {
    private final List<Circuit> circuits;
    private final int[] feeders;
    private final List<List<Integer>> taps;

    FeedTree(final Vehicle vehicle) {
        this.circuits = vehicle.circuits();
        this.feeders =
                IntStream.range(0, circuits.size())
                        .map(i -> named(circuits.get(i).feed().circuit()))
                        .toArray();
        this.taps = circuits.stream().<List<Integer>>map(each -> new ArrayList<>()).toList();
        IntStream.range(0, circuits.size())
                .forEach(tap -> feeder(tap).ifPresent(at -> taps.get(at).add(tap)));
    }

    private int named(final String name) {
        return name.isBlank()
                ? -1
                : IntStream.range(0, circuits.size())
                        .filter(i -> circuits.get(i).name().equals(name))
                        .findFirst()
                        .orElse(-1);
    }

    /** The circuit it is tapped off; empty where it comes from the board. */
    OptionalInt feeder(final int circuit) {
        return feeders[circuit] < 0 || inACircle(circuit)
                ? OptionalInt.empty()
                : OptionalInt.of(feeders[circuit]);
    }

    private boolean inACircle(final int circuit) {
        final Set<Integer> passed = new HashSet<>();
        for (int at = circuit; at >= 0; at = feeders[at]) {
            if (!passed.add(at)) {
                return true;
            }
        }
        return false;
    }

    /** The circuits tapped off its cable. */
    List<Integer> taps(final int circuit) {
        return Collections.unmodifiableList(taps.get(circuit));
    }

    /** All circuits, each after those tapped off it. */
    List<Integer> tapsFirst() {
        final List<Integer> order = new ArrayList<>();
        IntStream.range(0, circuits.size())
                .filter(i -> feeder(i).isEmpty())
                .forEach(i -> collect(i, order));
        return order;
    }

    private void collect(final int circuit, final List<Integer> order) {
        taps(circuit).forEach(tap -> collect(tap, order));
        order.add(circuit);
    }

    /** What is wrong with where a circuit is said to be fed from. */
    Optional<FieldNote> note(final int circuit) {
        final String from = circuits.get(circuit).feed().circuit();
        if (from.isBlank()) {
            return Optional.empty();
        }
        if (feeders[circuit] < 0) {
            return wrong(Said.of("no-circuit", "name", from));
        }
        return inACircle(circuit) ? wrong(Said.of("feeds-itself", "name", from)) : Optional.empty();
    }

    private static Optional<FieldNote> wrong(final String text) {
        return Optional.of(FieldNote.wrong("fed-from", text));
    }
}
