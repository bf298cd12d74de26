package wireworthy.window;

import java.util.List;
import java.util.Optional;
import wireworthy.marking.Mark;
import wireworthy.marking.Marker;
import wireworthy.rules.Quantity;

/**
 * An answer to an exercise, or to a line of it, as it is kept.
 *
 * @param asked the quantity answered; empty where one of a few was chosen or steps were ordered
 * @param typed the answer as typed or chosen
 * @param understood how it was read
 * @param sound empty where it could not be read
 * @param slips what explains it: alternatives, each one id or a pair
 * @param suspected pairs of slips that fit it, until another problem shows one again
 */
public record Attempt(
        Optional<Quantity> asked,
        String typed,
        String understood,
        Optional<Boolean> sound,
        List<List<String>> slips,
        List<List<String>> suspected) {

    /** A figure that was marked; it counts as right where it follows from earlier ones. */
    static Attempt of(final Mark mark) {
        return new Attempt(
                Optional.of(mark.ref().quantity()),
                mark.given(),
                mark.understood(),
                mark.sound().map(sound -> sound || mark.follows()),
                Marker.ids(mark),
                Marker.suspectedIds(mark));
    }

    /**
     * Something other than a figure.
     *
     * @param slip the one that led to it
     */
    static Attempt at(
            final Optional<Quantity> asked,
            final String given,
            final boolean sound,
            final Optional<String> slip) {
        return new Attempt(
                asked,
                given,
                "",
                Optional.of(sound),
                slip.map(List::of).map(List::of).orElse(List.of()),
                List.of());
    }
}
