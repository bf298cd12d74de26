package wireworthy.practice;

import java.time.Instant;
import java.time.ZoneId;

/**
 * A point in time as the learner's day and clock tell it.
 *
 * @param day counted in days from 1 January 1970, where the learner is
 * @param second counted from the beginning of 1970, UTC
 */
public record Moment(long day, long second) {
    /**
     * The moment of an instant.
     *
     * @param zone in which a day begins and ends
     */
    public static Moment of(final Instant instant, final ZoneId zone) {
        return new Moment(
                instant.atZone(zone).toLocalDate().toEpochDay(), instant.getEpochSecond());
    }
}
