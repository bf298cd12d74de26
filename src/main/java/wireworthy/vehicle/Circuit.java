package wireworthy.vehicle;

import java.util.ArrayList;
import java.util.List;
import wireworthy.rules.Quantity;

/**
 * One circuit: the cable behind one fuse, with all that hangs on it.
 *
 * @param colour of the cable's insulation, in words; empty where not chosen
 * @param neverWith circuits that share this text never run at the same time; empty for none
 * @param notes the builder's own; empty for none
 * @param part what is known of the cable and its fuse; the builder's own figures
 * @param stretches where the cable feeds several places in turn; else empty
 */
public record Circuit(
        String name,
        String colour,
        String neverWith,
        String notes,
        Feed feed,
        Part part,
        List<Load> loads,
        List<Stretch> stretches) {
    public Circuit {
        loads = List.copyOf(loads);
        stretches = List.copyOf(stretches);
    }

    /** A circuit of which only the name is known. */
    public static Circuit named(final String name) {
        return new Circuit(name, "", "", "", Feed.BOARD, Part.EMPTY, List.of(), List.of());
    }

    /** Whether its cable feeds several places in turn. */
    public boolean isNetwork() {
        return !stretches.isEmpty();
    }

    public Circuit renamed(final String other) {
        return new Circuit(other, colour, neverWith, notes, feed, part, loads, stretches);
    }

    public Circuit withColour(final String other) {
        return new Circuit(name, other, neverWith, notes, feed, part, loads, stretches);
    }

    public Circuit withNeverWith(final String other) {
        return new Circuit(name, colour, other, notes, feed, part, loads, stretches);
    }

    public Circuit withNotes(final String other) {
        return new Circuit(name, colour, neverWith, other, feed, part, loads, stretches);
    }

    public Circuit fedFrom(final Feed other) {
        return new Circuit(name, colour, neverWith, notes, other, part, loads, stretches);
    }

    public Circuit withGiven(final Quantity quantity, final String text) {
        return withPart(part.withGiven(quantity, text));
    }

    public Circuit withAnswer(final Quantity quantity, final String text) {
        return withPart(part.withAnswer(quantity, text));
    }

    public Circuit withPart(final Part other) {
        return new Circuit(name, colour, neverWith, notes, feed, other, loads, stretches);
    }

    public Circuit withLoads(final List<Load> others) {
        return new Circuit(name, colour, neverWith, notes, feed, part, others, stretches);
    }

    public Circuit withLoad(final int index, final Load load) {
        return withLoads(Lists.replaced(loads, index, load));
    }

    public Circuit plus(final Load load) {
        final List<Load> more = new ArrayList<>(loads);
        more.add(load);
        return withLoads(more);
    }

    public Circuit withStretches(final List<Stretch> others) {
        return new Circuit(name, colour, neverWith, notes, feed, part, loads, others);
    }

    /** Another stretch in this place; what lies at its end follows a change of that end's name. */
    public Circuit withStretch(final int index, final Stretch stretch) {
        final Circuit changed = withStretches(Lists.replaced(stretches, index, stretch));
        final String before = stretches.get(index).to();
        return CablePlaces.of(this).contains(stretch.to())
                ? changed
                : CablePlaces.followed(changed, before, stretch.to());
    }
}
