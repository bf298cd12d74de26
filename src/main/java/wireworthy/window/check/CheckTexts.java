package wireworthy.window.check;

import wireworthy.texts.TextBundle;

/** The texts of the place, from {@code texts/check.properties}. */
final class CheckTexts {
    private static final TextBundle TEXTS = new TextBundle("check");

    private CheckTexts() {}

    /**
     * A text with its places filled in.
     *
     * @param filling pairs of a place's name and what stands there
     */
    static String of(final String key, final Object... filling) {
        return TEXTS.of(key, filling);
    }

    /** So many of something: one has words of its own. */
    static String counted(final String key, final int count) {
        return of(count == 1 ? key + ".one" : key, "count", count);
    }
}
