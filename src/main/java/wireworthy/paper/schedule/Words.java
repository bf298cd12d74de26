package wireworthy.paper.schedule;

import java.util.OptionalDouble;
import wireworthy.rules.Quantity;
import wireworthy.texts.TextBundle;
import wireworthy.working.Telling;

/** The words of the schedule. */
final class Words {
    private static final TextBundle TEXTS = new TextBundle("schedule");

    private Words() {}

    static String of(final String key) {
        return TEXTS.of(key);
    }

    /** A text with one place filled in. */
    static String of(final String key, final String place, final String words) {
        return of(key).replace("{" + place + "}", words);
    }

    /** A value as it is told; "not known" where it isn't. */
    static String value(final Quantity quantity, final OptionalDouble si) {
        return si.isEmpty() ? of("unknown") : Telling.result(quantity, si.getAsDouble());
    }
}
