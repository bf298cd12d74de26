package wireworthy.window.evening;

import wireworthy.texts.TextBundle;

/** The texts of the place, from {@code texts/evening-class.properties}. */
final class EveningTexts {
    private static final TextBundle TEXTS = new TextBundle("evening-class");

    private EveningTexts() {}

    /**
     * A text with its places filled in.
     *
     * @param filling pairs of a place's name and what stands there
     */
    static String of(final String key, final Object... filling) {
        return TEXTS.of(key, filling);
    }
}
