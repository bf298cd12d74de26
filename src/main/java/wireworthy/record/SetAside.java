package wireworthy.record;

import java.nio.file.Path;

/**
 * A damaged record that was set aside, never deleted.
 *
 * @param file its new name
 * @param saved how many answers could be taken over into the new record
 */
public record SetAside(Path file, int saved) {
    /** What happened, in words. */
    public String words() {
        return "The record of your answers was damaged. "
                + (saved == 0
                        ? "Nothing in it could be read"
                        : saved + (saved == 1 ? " answer" : " answers") + " could be saved")
                + "; the damaged file is kept as "
                + file.getFileName()
                + ", and a new one was begun.";
    }
}
