package wireworthy.record;

import java.nio.file.Path;
import wireworthy.texts.TextBundle;

/**
 * A damaged record that was set aside, never deleted.
 *
 * @param file its new name
 * @param saved how many answers could be taken over into the new record
 */
public record SetAside(Path file, int saved) {
    private static final TextBundle TEXTS = new TextBundle("record-refusals");

    /** What happened, in words. */
    public String words() {
        final String key = saved == 0 ? "none" : saved == 1 ? "one" : "many";
        return TEXTS.of("set-aside." + key, "file", file.getFileName(), "saved", saved);
    }
}
