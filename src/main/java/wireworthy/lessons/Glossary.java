package wireworthy.lessons;

import java.util.Set;
import wireworthy.texts.TextBundle;

/**
 * Words of the trade in a sentence or two, from {@code texts/glossary.properties}. A lesson marks
 * one by a link such as {@code word:short-circuit}; it is explained where it stands.
 */
public final class Glossary {
    /** How a link to a word begins. */
    public static final String LINK = "word:";

    private static final TextBundle TEXTS = new TextBundle("glossary");

    private Glossary() {}

    /** The ids of the words there are, such as {@code short-circuit}. */
    public static Set<String> ids() {
        return TEXTS.keys();
    }

    /** Whether a link leads to a word that is explained here. */
    public static boolean leadsTo(final String link) {
        return link.startsWith(LINK) && TEXTS.has(id(link));
    }

    /**
     * What the word of a link means, in the language in use.
     *
     * @param link one that {@link #leadsTo} a word
     */
    public static String meaning(final String link) {
        return TEXTS.of(id(link));
    }

    private static String id(final String link) {
        return link.substring(LINK.length());
    }
}
