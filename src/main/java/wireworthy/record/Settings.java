package wireworthy.record;

import java.util.Optional;

/**
 * How a person likes the window. Immutable; each {@code with} method gives a changed copy.
 *
 * @param version the form these settings are written in, {@link #VERSION}
 * @param dark whether the dark colours are shown
 * @param textSize text size in per cent, from {@link #SMALLEST_TEXT} to {@link #LARGEST_TEXT}
 * @param place the id of the place last open, empty before the first start
 * @param lesson the id of the lesson last open, empty before the first
 * @param window where the window last stood, if it was ever moved or sized
 */
public record Settings(
        int version,
        boolean dark,
        int textSize,
        String place,
        String lesson,
        Optional<WindowBounds> window) {
    /** The form settings are written in today. */
    public static final int VERSION = 1;

    /** Text sizes run from this to {@link #LARGEST_TEXT}, in per cent. */
    public static final int SMALLEST_TEXT = 100;

    public static final int LARGEST_TEXT = 200;

    /** The settings before anybody changed them. */
    public static final Settings DEFAULTS =
            new Settings(VERSION, false, SMALLEST_TEXT, "", "", Optional.empty());

    /** Clamps the text size, since a settings file can be edited by hand. */
    public Settings {
        textSize = Math.max(SMALLEST_TEXT, Math.min(LARGEST_TEXT, textSize));
    }

    public Settings withDark(final boolean value) {
        return new Settings(version, value, textSize, place, lesson, window);
    }

    public Settings withTextSize(final int perCent) {
        return new Settings(version, dark, perCent, place, lesson, window);
    }

    public Settings withPlace(final String id) {
        return new Settings(version, dark, textSize, id, lesson, window);
    }

    public Settings withLesson(final String id) {
        return new Settings(version, dark, textSize, place, id, window);
    }

    public Settings withWindow(final WindowBounds bounds) {
        return new Settings(version, dark, textSize, place, lesson, Optional.of(bounds));
    }
}
