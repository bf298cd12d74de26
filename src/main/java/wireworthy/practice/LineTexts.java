package wireworthy.practice;

import wireworthy.texts.TextBundle;

/** The texts beside the lines of a working, from {@code texts/lines.properties}. */
public final class LineTexts {
    private static final TextBundle TEXTS = new TextBundle("lines");

    private LineTexts() {}

    /**
     * A text with its places filled in.
     *
     * @param filling pairs of a place's name and what stands there
     */
    public static String of(final String key, final Object... filling) {
        return TEXTS.of(key, filling);
    }
}
