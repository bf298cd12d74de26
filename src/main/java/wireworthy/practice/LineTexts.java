package wireworthy.practice;

import java.util.ResourceBundle;

/** The texts beside the lines of a working, from {@code texts/lines.properties}. */
public final class LineTexts {
    private static final ResourceBundle TEXTS = ResourceBundle.getBundle("wireworthy.texts.lines");

    private LineTexts() {}

    /**
     * A text with its places filled in.
     *
     * @param filling pairs of a place's name and what stands there
     */
    public static String of(final String key, final Object... filling) {
        String text = TEXTS.getString(key);
        for (int i = 0; i < filling.length; i += 2) {
            text = text.replace("{" + filling[i] + "}", filling[i + 1].toString());
        }
        return text;
    }
}
