package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.RESISTIVITY;

import java.util.Optional;
import java.util.stream.Stream;
import wireworthy.marking.Evidence;
import wireworthy.marking.Mark;
import wireworthy.marking.Marker;
import wireworthy.marking.Onward;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.working.Telling;
import wireworthy.working.Worked;

/**
 * Whether a figure goes by another published resistivity of copper than this program.
 *
 * @param onward the working, carried on from the figures above
 */
record OtherCopper(CopperFigures figures, Onward onward, Mark mark) {
    /** The same worked with the other resistivities, where the question leaves it open. */
    Stream<Worked> others() {
        return open().map(figures::worked);
    }

    /** The one by which it is right to the digit typed; empty where none is. */
    Optional<Reading.Read> toTheDigit(final boolean follows) {
        return open().filter(each -> isRounded(follows, figures.worked(each))).findFirst();
    }

    /** The mark by the one that figures above it go by, else by this program's. */
    Optional<Mark> by(final Optional<Reading.Read> used, final Evidence evidence) {
        final Worked taken =
                used.filter(each -> open().anyMatch(each::equals))
                        .map(figures::worked)
                        .orElse(onward.worked());
        return Marker.marks(taken, evidence).stream()
                .filter(other -> other.ref().equals(mark.ref()))
                .findFirst()
                .map(other -> other.saying(byThis(other, taken)));
    }

    /** The mark by the first one that makes it sound. */
    Optional<Mark> near() {
        return open().flatMap(this::by).filter(Mark::isSound).findFirst();
    }

    /** The mark by the first one with which a slip explains it. */
    Optional<Mark> slip() {
        return open().flatMap(this::by).filter(it -> it.diagnosis().settled()).findFirst();
    }

    /** All of them where it is left open what copper resists, and the figure hangs on it. */
    private Stream<Reading.Read> open() {
        return figures.isOpen() && onward.leadsTo(Ref.circuit(RESISTIVITY), mark.ref())
                ? CopperFigures.OTHERS.stream()
                : Stream.empty();
    }

    /** Worked on from the figures above, or in full where these are sound. */
    private boolean isRounded(final boolean follows, final Worked other) {
        return mark.isRounded(onward.in(other).value(mark.ref()))
                || (!follows && mark.isRounded(other.value(mark.ref()).orElse(Double.NaN)));
    }

    private Stream<Mark> by(final Reading.Read resistivity) {
        final Worked taken = figures.worked(resistivity);
        return figures.mark(resistivity, mark.ref()).stream()
                .map(other -> other.saying(byThis(other, taken)))
                .map(other -> saying(other, key(other), resistivity));
    }

    private static String key(final Mark other) {
        return other.isSound() ? "other-copper.sound" : "other-copper";
    }

    /** What comes out is told as it does here, not by the other copper. */
    private String byThis(final Mark other, final Worked taken) {
        final String words = other.explanation();
        return other.isSound() ? words : words.replace(right(taken), right(onward.worked()));
    }

    private String right(final Worked worked) {
        final Ref ref = mark.ref();
        return Telling.exact(ref.quantity(), worked.value(ref).orElse(Double.NaN));
    }

    /** The mark, saying by which copper. */
    static Mark saying(final Mark mark, final String key, final Reading.Read resistivity) {
        return mark.saying(Said.of(key, "mark", mark.explanation(), "copper", resistivity.text()));
    }
}
