package wireworthy.window;

import wireworthy.texts.TextBundle;

/** The texts of the window itself and of its pages, from {@code texts/window.properties}. */
final class WindowTexts {
    private static final TextBundle TEXTS = new TextBundle("window");

    private WindowTexts() {}

    /**
     * A text with its places filled in.
     *
     * @param filling pairs of a place's name and what stands there
     */
    static String of(final String key, final Object... filling) {
        return TEXTS.of(key, filling);
    }
}
