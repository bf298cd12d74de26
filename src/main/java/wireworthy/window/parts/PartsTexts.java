package wireworthy.window.parts;

import wireworthy.texts.TextBundle;

/** The texts of what the places share, from {@code texts/parts.properties}. */
final class PartsTexts {
    private static final TextBundle TEXTS = new TextBundle("parts");

    private PartsTexts() {}

    /**
     * A text with its places filled in.
     *
     * @param filling pairs of a place's name and what stands there
     */
    static String of(final String key, final Object... filling) {
        return TEXTS.of(key, filling);
    }
}
