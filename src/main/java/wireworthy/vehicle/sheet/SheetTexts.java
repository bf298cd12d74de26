package wireworthy.vehicle.sheet;

import wireworthy.texts.TextBundle;

/** What is said about a spreadsheet, from {@code texts/columns.properties}. */
final class SheetTexts {
    private static final TextBundle TEXTS = new TextBundle("columns");

    private SheetTexts() {}

    /**
     * A text with its places filled in.
     *
     * @param filling pairs of a place's name and what stands there
     */
    static String of(final String key, final Object... filling) {
        return TEXTS.of(key, filling);
    }
}
