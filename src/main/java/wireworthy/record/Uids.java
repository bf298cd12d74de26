package wireworthy.record;

import java.util.Locale;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Ids that no other record has. Sorted as text, those of the answers of one person are in the order
 * in which they were given: they begin with the time, or, where the clock was set back, with the
 * next moment after the answer before (a hybrid clock: Kulkarni and others 2014, from memory).
 */
final class Uids {
    private static final AtomicInteger COUNT = new AtomicInteger();
    private static final int COUNTED = 0xfffff;
    private static final int TIME = 12;
    private static final int REST = 19;

    private Uids() {}

    /**
     * The id of a new answer.
     *
     * @param before the id of the answer before it, empty where there is none
     */
    static String ofAnswer(final Answer answer, final String before) {
        final String time = time(answer);
        final boolean back = time.compareTo(before) < 0 && !before.startsWith(time);
        final String random = String.format("%016x", UUID.randomUUID().getLeastSignificantBits());
        return String.format(
                Locale.ROOT,
                "%s-%05x-%s",
                back ? next(before) : time,
                COUNT.getAndIncrement() & COUNTED,
                back ? time + random.substring(TIME) : random);
    }

    private static String time(final Answer answer) {
        return hex(Math.max(0, answer.at().toEpochMilli()));
    }

    private static String hex(final long moment) {
        return String.format(Locale.ROOT, "%012x", moment);
    }

    private static String next(final String before) {
        try {
            return hex(Long.parseLong(before.substring(0, TIME), 16) + 1);
        } catch (final NumberFormatException | IndexOutOfBoundsException e) {
            // An id of another make; whatever sorts after it will do.
            return before + "+";
        }
    }

    /** Whether an id tells the time of its answer. */
    static boolean tells(final String uid, final Answer answer) {
        final String time = time(answer);
        return uid.startsWith(time + "-") || uid.startsWith(time, REST);
    }

    static String ofPerson() {
        return UUID.randomUUID().toString();
    }
}
