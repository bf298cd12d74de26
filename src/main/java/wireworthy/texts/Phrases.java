package wireworthy.texts;

import java.util.Map;
import java.util.regex.Pattern;

/**
 * Phrases that stand in English beside the code or the figures they belong to, such as the text of
 * a sum. Another language has them in a file, under the English words joined with hyphens; what it
 * leaves out stays English.
 */
public final class Phrases {
    private record Read(Language language, Map<String, String> phrases) {}

    private static final Pattern OTHER = Pattern.compile("[^A-Za-z0-9]+");

    private final String name;
    private volatile Read read = new Read(Language.ENGLISH, Map.of());

    /**
     * @param name of the file, without its ending
     */
    public Phrases(final String name) {
        this.name = name;
    }

    /** A phrase in the language in use, without the blanks around it. */
    public String of(final String english) {
        final Language now = Language.inUse();
        return now.ofSources()
                ? english.strip()
                : in(now).getOrDefault(key(english), english.strip());
    }

    /** Under which a phrase stands in the file. */
    public static String key(final String english) {
        return OTHER.matcher(english.strip()).replaceAll(" ").strip().replace(' ', '-');
    }

    private Map<String, String> in(final Language language) {
        Read known = read;
        if (!known.language().equals(language)) {
            known = new Read(language, TextFile.alone(name, language));
            read = known;
        }
        return known.phrases();
    }
}
