package wireworthy.evening;

import java.util.Locale;

/** How hard a problem is. */
public enum Difficulty {
    EASY,
    MIDDLING,
    HARD;

    /** The name used on the command line. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The one of a template, which says -1, 0 or 1. */
    static Difficulty of(final int grade) {
        return values()[grade + 1];
    }
}
