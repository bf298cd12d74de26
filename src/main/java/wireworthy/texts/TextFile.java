package wireworthy.texts;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Properties;

/** Reads the texts of one file; nothing where there is no such file. */
final class TextFile {
    private static final String ENDING = ".properties";

    private TextFile() {}

    /** The texts of a name in a language, those it leaves out in English. */
    static Map<String, String> over(final String name, final Language language) {
        final Map<String, String> texts = new HashMap<>(read(name));
        if (texts.isEmpty()) {
            throw new IllegalArgumentException("There are no texts " + name);
        }
        texts.putAll(alone(name, language));
        return texts;
    }

    /** The texts of a name in a language; empty for English, whose texts stand elsewhere. */
    static Map<String, String> alone(final String name, final Language language) {
        return language.ofSources() ? Map.of() : read(language.code() + "/" + name);
    }

    /**
     * The texts of one file, such as {@code marks} or {@code de/marks}; empty where there is none.
     */
    static Map<String, String> read(final String path) {
        try (InputStream file = TextFile.class.getResourceAsStream(path + ENDING)) {
            return file == null ? Map.of() : read(file);
        } catch (final IOException e) {
            throw new UncheckedIOException("The texts " + path + " can't be read", e);
        }
    }

    private static Map<String, String> read(final InputStream file) throws IOException {
        final Properties read = new Properties();
        read.load(new InputStreamReader(file, StandardCharsets.UTF_8));
        final Map<String, String> texts = new HashMap<>();
        read.forEach((key, text) -> texts.put((String) key, (String) text));
        return texts;
    }
}
