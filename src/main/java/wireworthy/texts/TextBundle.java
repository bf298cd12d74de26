package wireworthy.texts;

import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Texts of one kind, from {@code texts/<name>.properties} with the file of the language in use laid
 * over it. Read when first wanted, and anew when the language changes.
 */
public final class TextBundle {
    private record Read(Language language, Map<String, String> texts) {}

    private static final Language NONE = new Language("", "", '.');

    private final String name;
    private volatile Read read = new Read(NONE, Map.of());
    private volatile Map<String, String> english = Map.of();

    /**
     * @param name of the file, without its ending
     */
    public TextBundle(final String name) {
        this.name = name;
    }

    /** Whether there is a text of this key. */
    public boolean has(final String key) {
        return texts().containsKey(key);
    }

    /** All keys there are. */
    public Set<String> keys() {
        return Set.copyOf(texts().keySet());
    }

    /**
     * A text with its places, such as {@code {line}}, filled in.
     *
     * @param filling pairs of a place's name and what stands there
     */
    public String of(final String key, final Object... filling) {
        String text = texts().getOrDefault(key, "");
        if (text.isEmpty()) {
            throw new IllegalArgumentException("No text " + key + " in " + name);
        }
        for (int i = 0; i < filling.length; i += 2) {
            text = text.replace("{" + filling[i] + "}", filling[i + 1].toString());
        }
        return text;
    }

    /** A text in English whatever the language in use, for what is written into files. */
    public Optional<String> inFiles(final String key) {
        if (english.isEmpty()) {
            english = TextFile.read(name);
        }
        return Optional.ofNullable(english.get(key));
    }

    private Map<String, String> texts() {
        final Language now = Language.inUse();
        Read known = read;
        if (!known.language().equals(now)) {
            known = new Read(now, TextFile.over(name, now));
            read = known;
        }
        return known.texts();
    }
}
