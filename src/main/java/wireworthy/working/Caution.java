package wireworthy.working;

import wireworthy.texts.TextBundle;

/**
 * Something in the numbers that could hurt someone.
 *
 * @param id stable name
 * @param danger how bad
 * @param text for people
 */
public record Caution(String id, Danger danger, String text) {
    private static final TextBundle TEXTS = new TextBundle("cautions");

    /** The text where no heading says that it is not known yet. */
    public String alone() {
        return danger == Danger.NOT_KNOWN ? TEXTS.of("not-known", "text", text) : text;
    }
}
