package wireworthy.marking;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.working.Worked;

/**
 * A working carried on from the figures that stand before a line.
 *
 * @param before the marks of these figures
 */
public record Onward(Worked worked, List<Mark> before) {
    public Onward {
        before = List.copyOf(before);
    }

    /** The same worked otherwise. */
    public Onward in(final Worked other) {
        return new Onward(other, before);
    }

    /** The value of a line, SI; NaN where the working has no such line. */
    public double value(final Ref ref) {
        return value(ref, pinned());
    }

    /**
     * How far a value may lie off because the figures it was worked from stand there rounded: each
     * stands for all that lies within half a unit of its last digit; SI.
     */
    public double slack(final Ref ref) {
        final double[] pinned = pinned();
        final double value = value(ref, pinned);
        return before.stream().mapToDouble(mark -> Math.abs(moved(mark, ref) - value)).sum();
    }

    /** The value where one of the figures is half a unit of its last digit larger. */
    private double moved(final Mark mark, final Ref ref) {
        final double[] pinned = pinned();
        if (mark.reading() instanceof Reading.Read read && !mark.ref().quantity().chosen()) {
            worked.plan()
                    .placeOf(mark.ref())
                    .ifPresent(place -> pinned[place] = read.value() + read.lastDigit() / 2);
        }
        return value(ref, pinned);
    }

    private double value(final Ref ref, final double[] pinned) {
        return worked.plan()
                .placeOf(ref)
                .map(place -> SlipFigures.carriedOn(worked, ref, pinned).run(List.of())[place])
                .orElse(Double.NaN);
    }

    private double[] pinned() {
        return lines().pinned();
    }

    private OwnLines lines() {
        final OwnLines own = new OwnLines(worked);
        for (final Mark mark : before) {
            if (mark.reading() instanceof Reading.Read read
                    && worked.plan().placeOf(mark.ref()).isPresent()) {
                own.add(mark.ref(), read);
            }
        }
        return own;
    }

    /** Whether a line goes into another. */
    public boolean leadsTo(final Ref line, final Ref asked) {
        return new OwnLines(worked).leadsTo(line, asked);
    }

    /** Whether one of the figures is read and not sound, and a line is worked from it. */
    public boolean followsFromUnsound(final Ref ref) {
        return lastUnsound(ref).isPresent();
    }

    /** The last of the figures that is read and not sound, and from which a line is worked. */
    public Optional<Mark> lastUnsound(final Ref ref) {
        return leading(ref).filter(mark -> !mark.isSound()).reduce((earlier, later) -> later);
    }

    /** The last of the figures from which a line is worked. */
    public Optional<Mark> last(final Ref ref) {
        return leading(ref).reduce((earlier, later) -> later);
    }

    private Stream<Mark> leading(final Ref ref) {
        return before.stream()
                .filter(mark -> mark.reading() instanceof Reading.Read)
                .filter(mark -> leadsTo(mark.ref(), ref));
    }
}
