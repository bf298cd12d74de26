package wireworthy.vehicle.check;

import wireworthy.texts.TextBundle;

/** What a check says, from {@code texts/checked.properties}. */
final class Said {
    private static final TextBundle TEXTS = new TextBundle("checked");

    private Said() {}

    /**
     * A text with its places filled in.
     *
     * @param filling pairs of a place's name and what stands there
     */
    static String of(final String key, final Object... filling) {
        return TEXTS.of(key, filling);
    }
}
