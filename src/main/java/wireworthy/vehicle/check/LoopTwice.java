package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.DROP;
import static wireworthy.rules.Quantity.DROP_PERCENT;
import static wireworthy.rules.Quantity.LOOP_LENGTH;
import static wireworthy.rules.Quantity.LOOP_RESISTANCE;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wireworthy.marking.Mark;
import wireworthy.marking.Onward;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;

/** Twice what comes out, by whichever copper: the loop was doubled once more. */
record LoopTwice(Onward onward, OtherCopper copper) {
    /** What grows with the length of the loop. */
    private static final Set<Quantity> OF_THE_LOOP =
            EnumSet.of(LOOP_LENGTH, LOOP_RESISTANCE, DROP, DROP_PERCENT);

    /** The mark, saying so; empty where it is not. */
    Optional<Mark> told() {
        final Mark mark = copper.mark();
        return OF_THE_LOOP.contains(mark.ref().quantity()) && !loopStands() && isTwice()
                ? Optional.of(mark.saying(Said.of("own.doubled", "figure", mark.understood())))
                : Optional.empty();
    }

    private boolean isTwice() {
        final Mark mark = copper.mark();
        return Stream.concat(Stream.of(onward.worked()), copper.others())
                .anyMatch(it -> mark.isRounded(2 * onward.in(it).value(mark.ref())));
    }

    /** Whether a figure of the loop stands above, from which this one was to be worked. */
    private boolean loopStands() {
        return onward.before().stream()
                .filter(it -> it.isSound() || it.follows())
                .map(Mark::ref)
                .filter(it -> OF_THE_LOOP.contains(it.quantity()))
                .anyMatch(this::leadsHere);
    }

    private boolean leadsHere(final Ref line) {
        return onward.leadsTo(line, copper.mark().ref());
    }
}
