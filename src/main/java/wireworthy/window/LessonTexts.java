package wireworthy.window;

import wireworthy.texts.TextBundle;

/** The texts of the Lessons place, from {@code texts/lessons.properties}. */
final class LessonTexts {
    private static final TextBundle TEXTS = new TextBundle("lessons");

    private LessonTexts() {}

    /**
     * A text with its places filled in.
     *
     * @param filling pairs of a place's name and what stands there
     */
    static String of(final String key, final Object... filling) {
        return TEXTS.of(key, filling);
    }
}
