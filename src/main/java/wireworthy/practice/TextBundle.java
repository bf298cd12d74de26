package wireworthy.practice;

import java.util.ResourceBundle;

/** Texts of one kind, from a file under {@code texts}, with places such as {@code {line}}. */
public final class TextBundle {
    private final ResourceBundle texts;

    /**
     * @param name of the file, without its ending
     */
    public TextBundle(final String name) {
        texts = ResourceBundle.getBundle("wireworthy.texts." + name);
    }

    /**
     * A text with its places filled in.
     *
     * @param filling pairs of a place's name and what stands there
     */
    public String of(final String key, final Object... filling) {
        String text = texts.getString(key);
        for (int i = 0; i < filling.length; i += 2) {
            text = text.replace("{" + filling[i] + "}", filling[i + 1].toString());
        }
        return text;
    }
}
