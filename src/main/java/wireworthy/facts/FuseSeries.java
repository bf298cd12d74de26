package wireworthy.facts;

import java.util.List;
import java.util.OptionalDouble;
import wireworthy.texts.TextBundle;

/**
 * The ratings one kind of fuse is made in. Ratings compare as {@link StandardSizes} do.
 *
 * @param ratings in A, ascending
 * @param voltageRatings in V, ascending; empty if only the maker's data sheet says
 * @param breakingCapacity in A; empty if only the maker's data sheet says
 */
public record FuseSeries(
        String id,
        String title,
        Source source,
        List<Double> ratings,
        List<Double> voltageRatings,
        OptionalDouble breakingCapacity) {
    private static final TextBundle WORDS = new TextBundle("series");

    public FuseSeries {
        ratings = List.copyOf(ratings);
        voltageRatings = List.copyOf(voltageRatings);
    }

    /** What people call it, in the language in use; {@link #id()} is its name in files. */
    public String words() {
        return WORDS.of("series." + id);
    }

    /** The smallest rating at or above so many A: 8 A times 1.25 takes 10 A. */
    public OptionalDouble atOrAbove(final double amps) {
        return StandardSizes.atOrAbove(ratings, amps);
    }

    /** The largest rating below so many A. */
    public OptionalDouble below(final double amps) {
        return StandardSizes.below(ratings, amps);
    }

    /** The largest rating at or below so many A. */
    public OptionalDouble atOrBelow(final double amps) {
        return StandardSizes.atOrBelow(ratings, amps);
    }

    /** The rating nearest to so many A; of two equally near the smaller. */
    public OptionalDouble nearest(final double amps) {
        return StandardSizes.nearest(ratings, amps);
    }

    /** Whether fuses of this kind are made for so many A. */
    public boolean holds(final double amps) {
        return StandardSizes.holds(ratings, amps);
    }
}
