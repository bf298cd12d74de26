package wireworthy.window;

import wireworthy.texts.TextBundle;

/** The texts of the people on this machine, from {@code texts/people.properties}. */
final class PeopleTexts {
    private static final TextBundle TEXTS = new TextBundle("people");

    private PeopleTexts() {}

    /**
     * A text with its places filled in.
     *
     * @param filling pairs of a place's name and what stands there
     */
    static String of(final String key, final Object... filling) {
        return TEXTS.of(key, filling);
    }
}
