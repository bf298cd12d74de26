package wireworthy.practice;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What the drawn circuit of a problem shows as its load. */
public enum Drawing {
    LAMP,
    MOTOR,
    HEATER,
    CONVERTER,
    BATTERY,
    SEVERAL,
    NONE;

    /** The id used in banks. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<Drawing> of(final String id) {
        return Arrays.stream(values()).filter(each -> each.id().equals(id)).findFirst();
    }
}
