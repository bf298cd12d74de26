package wireworthy.vehicle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A vehicle as its builder describes it. Immutable: every change gives another one.
 *
 * @param notes the builder's own, free text
 * @param supply battery or bank, and what charges it
 * @param main the main fuse at the battery and the cable from there to the fuse board
 */
public record Vehicle(String name, String notes, Part supply, Part main, List<Circuit> circuits) {
    /** More would be a harness, not a vehicle one person wires. */
    public static final int MOST_CIRCUITS = 500;

    public static final int MOST_LOADS = 60;
    public static final int MOST_STRETCHES = 200;
    public static final int MOST_SECTIONS = 100;
    public static final int LONGEST_NAME = 120;
    public static final int LONGEST_TEXT = 200;
    public static final int LONGEST_NOTES = 8000;

    public Vehicle {
        circuits = List.copyOf(circuits);
    }

    /** One without circuits. */
    public static Vehicle named(final String name) {
        return new Vehicle(name, "", Part.EMPTY, Part.EMPTY, List.of());
    }

    public Vehicle renamed(final String other) {
        return new Vehicle(other, notes, supply, main, circuits);
    }

    public Vehicle withNotes(final String other) {
        return new Vehicle(name, other, supply, main, circuits);
    }

    public Vehicle withSupply(final Part other) {
        return new Vehicle(name, notes, other, main, circuits);
    }

    public Vehicle withMain(final Part other) {
        return new Vehicle(name, notes, supply, other, circuits);
    }

    public Vehicle withCircuits(final List<Circuit> others) {
        return new Vehicle(name, notes, supply, main, others);
    }

    /** The first circuit of this name. */
    public Optional<Circuit> circuit(final String wanted) {
        return circuits.stream().filter(circuit -> circuit.name().equals(wanted)).findFirst();
    }

    public Vehicle plus(final Circuit circuit) {
        final List<Circuit> more = new ArrayList<>(circuits);
        more.add(circuit);
        return withCircuits(more);
    }

    /** Another circuit in this place; taps off the old one follow a change of its name. */
    public Vehicle withCircuit(final int index, final Circuit circuit) {
        final String before = circuits.get(index).name();
        final Vehicle changed = withCircuits(Lists.replaced(circuits, index, circuit));
        return before.equals(circuit.name()) || changed.circuit(before).isPresent()
                ? changed
                : changed.withCircuits(
                        changed.circuits.stream()
                                .map(each -> follow(each, before, circuit.name()))
                                .toList());
    }

    private static Circuit follow(final Circuit tap, final String before, final String now) {
        final Feed feed = tap.feed();
        return feed.isTap() && feed.circuit().equals(before)
                ? tap.fedFrom(new Feed(now, feed.ownFuse()))
                : tap;
    }

    public Vehicle without(final int index) {
        final List<Circuit> fewer = new ArrayList<>(circuits);
        fewer.remove(index);
        return withCircuits(fewer);
    }
}
