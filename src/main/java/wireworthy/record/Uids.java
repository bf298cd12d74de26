package wireworthy.record;

import java.util.Locale;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;

/** Ids that no other record has; those of one moment are in the order in which they were made. */
final class Uids {
    private static final AtomicInteger COUNT = new AtomicInteger();
    private static final int COUNTED = 0xfffff;

    private Uids() {}

    static String ofAnswer(final Answer answer) {
        return String.format(
                Locale.ROOT,
                "%012x-%05x-%016x",
                answer.at().toEpochMilli(),
                COUNT.getAndIncrement() & COUNTED,
                UUID.randomUUID().getLeastSignificantBits());
    }

    static String ofPerson() {
        return UUID.randomUUID().toString();
    }
}
