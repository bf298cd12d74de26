package wireworthy.window.figures;

import wireworthy.texts.TextBundle;

/** The texts of the live figures, from {@code texts/figures.properties}. */
final class FigureTexts {
    private static final TextBundle TEXTS = new TextBundle("figures");

    private FigureTexts() {}

    /**
     * A text with its places filled in.
     *
     * @param filling pairs of a place's name and what stands there
     */
    static String of(final String key, final Object... filling) {
        return TEXTS.of(key, filling);
    }
}
