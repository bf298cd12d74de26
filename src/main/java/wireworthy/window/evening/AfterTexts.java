package wireworthy.window.evening;

import wireworthy.texts.TextBundle;

/** What stands afterwards, from {@code texts/afterwards.properties}. */
final class AfterTexts {
    private static final TextBundle TEXTS = new TextBundle("afterwards");

    private AfterTexts() {}

    /**
     * A text with its places filled in.
     *
     * @param filling pairs of a place's name and what stands there
     */
    static String of(final String key, final Object... filling) {
        return TEXTS.of(key, filling);
    }
}
