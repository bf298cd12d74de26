package wireworthy.window;

import wireworthy.texts.TextBundle;

/** The texts of the Practice place, from {@code texts/practice.properties}. */
final class PracticeTexts {
    private static final TextBundle TEXTS = new TextBundle("practice");

    private PracticeTexts() {}

    /**
     * A text with its places filled in.
     *
     * @param filling pairs of a place's name and what stands there
     */
    static String of(final String key, final Object... filling) {
        return TEXTS.of(key, filling);
    }
}
