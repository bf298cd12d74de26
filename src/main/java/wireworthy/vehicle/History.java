package wireworthy.vehicle;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A vehicle with what it was before and what was undone. Immutable; the vehicles share what they
 * have in common.
 *
 * @param past the steps one can go back, the latest first
 * @param ahead the steps that were undone, the latest undone first
 */
public record History(List<Step> past, Step now, List<Step> ahead) {
    private static final int MOST_STEPS = 500;

    /**
     * A vehicle and the change that led to it.
     *
     * @param change what was changed, such as {@code circuits[2].given.section}; empty at the start
     * @param open whether the next change of the same entry belongs to it
     */
    public record Step(Vehicle vehicle, String change, boolean open) {}

    public History {
        past = List.copyOf(past);
        ahead = List.copyOf(ahead);
    }

    /** One without a past. */
    public static History of(final Vehicle vehicle) {
        return new History(List.of(), new Step(vehicle, "", false), List.of());
    }

    public Vehicle vehicle() {
        return now.vehicle();
    }

    /**
     * With a change made. Changes one after the other of the same entry are one step, so that a
     * figure typed letter by letter is undone at once.
     */
    public History changed(final Vehicle vehicle, final String change) {
        if (vehicle.equals(now.vehicle())) {
            return this;
        }
        final boolean goesOn = now.open() && !change.isEmpty() && change.equals(now.change());
        return new History(
                goesOn ? past : front(now, past), new Step(vehicle, change, true), List.of());
    }

    /** As it stands, but the next change begins a step of its own: the field was left. */
    public History settled() {
        return new History(past, new Step(now.vehicle(), now.change(), false), ahead);
    }

    /** One step back; empty at the start. */
    public Optional<History> undone() {
        return past.isEmpty()
                ? Optional.empty()
                : Optional.of(new History(rest(past), first(past), front(now, ahead)).settled());
    }

    /** One step forward again; empty where nothing was undone since the last change. */
    public Optional<History> redone() {
        return ahead.isEmpty()
                ? Optional.empty()
                : Optional.of(new History(front(now, past), first(ahead), rest(ahead)).settled());
    }

    private static Step first(final List<Step> steps) {
        return steps.get(0);
    }

    private static List<Step> rest(final List<Step> steps) {
        return steps.subList(1, steps.size());
    }

    private static List<Step> front(final Step step, final List<Step> steps) {
        return Stream.concat(Stream.of(step), steps.stream()).limit(MOST_STEPS).toList();
    }
}
