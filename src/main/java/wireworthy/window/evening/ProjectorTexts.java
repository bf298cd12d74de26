package wireworthy.window.evening;

import wireworthy.texts.TextBundle;

/** What stands at the projector, from {@code texts/projector.properties}. */
final class ProjectorTexts {
    private static final TextBundle TEXTS = new TextBundle("projector");

    private ProjectorTexts() {}

    /**
     * A text with its places filled in.
     *
     * @param filling pairs of a place's name and what stands there
     */
    static String of(final String key, final Object... filling) {
        return TEXTS.of(key, filling);
    }
}
