package wireworthy.texts;

import java.util.Map;
import java.util.Set;

/** The texts of one file, for tests that compare languages. */
public final class Keys {
    private Keys() {}

    /** The keys of a file such as {@code marks} or {@code de/marks}. */
    public static Set<String> of(final String path) {
        return texts(path).keySet();
    }

    /** The texts of a file by their keys. */
    public static Map<String, String> texts(final String path) {
        return TextFile.read(path);
    }
}
