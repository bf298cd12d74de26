package wireworthy.facts;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Choosing from an ascending list of standard sizes. Sizes that differ by less than {@value #SAME}
 * of each other are the same size, so that 8 A times 1.25 takes a 10 A fuse. A size that is not a
 * number finds nothing.
 */
public final class StandardSizes {
    /** Relative difference below which two sizes are one. */
    public static final double SAME = 1e-9;

    private StandardSizes() {}

    /** The smallest size at or above the given one. */
    public static OptionalDouble atOrAbove(final List<Double> ascending, final double size) {
        for (final double each : ascending) {
            if (each > size || same(each, size)) {
                return OptionalDouble.of(each);
            }
        }
        return OptionalDouble.empty();
    }

    /** The largest size below the given one. */
    public static OptionalDouble below(final List<Double> ascending, final double size) {
        return ascending.stream()
                .mapToDouble(Double::doubleValue)
                .filter(each -> each < size && !same(each, size))
                .max();
    }

    /** The largest size at or below the given one. */
    public static OptionalDouble atOrBelow(final List<Double> ascending, final double size) {
        OptionalDouble largest = OptionalDouble.empty();
        for (final double each : ascending) {
            if (each < size || same(each, size)) {
                largest = OptionalDouble.of(each);
            }
        }
        return largest;
    }

    /** The size that lies nearest; of two equally near the smaller. */
    public static OptionalDouble nearest(final List<Double> ascending, final double size) {
        return ascending.stream()
                .filter(each -> !Double.isNaN(size))
                .min(Comparator.comparingDouble(each -> Math.abs(each - size)))
                .map(OptionalDouble::of)
                .orElseGet(OptionalDouble::empty);
    }

    /** Whether the list has the given size. */
    public static boolean holds(final List<Double> ascending, final double size) {
        return ascending.stream().anyMatch(each -> same(each, size));
    }

    /** Whether two sizes are one. */
    public static boolean same(final double one, final double other) {
        return Math.abs(one - other) <= SAME * Math.max(Math.abs(one), Math.abs(other));
    }
}
