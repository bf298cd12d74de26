package wireworthy.record;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * How a person likes the window and the sums. Immutable; each {@code with} method gives a changed
 * copy.
 *
 * @param version the form these settings are written in, {@link #VERSION}
 * @param dark whether the dark colours are shown
 * @param textSize text size in per cent, from {@link #SMALLEST_TEXT} to {@link #LARGEST_TEXT}
 * @param leftOff where the window opens next time
 * @param window where the window last stood, if it was ever moved or sized
 * @param chosen the sums in use; empty until somebody chose
 * @param person code name under which answers are kept
 * @param language code of the language; empty until somebody chose
 */
public record Settings(
        int version,
        boolean dark,
        int textSize,
        LeftOff leftOff,
        Optional<WindowBounds> window,
        Optional<SumsInUse> chosen,
        String person,
        String language) {
    /** The form settings are written in today. */
    public static final int VERSION = 2;

    /** The text sizes one steps through, in per cent. */
    public static final List<Integer> TEXT_SIZES = List.of(100, 110, 125, 150, 175, 200);

    /** Text sizes run from this to {@link #LARGEST_TEXT}, in per cent. */
    public static final int SMALLEST_TEXT = 100;

    public static final int LARGEST_TEXT = 200;

    /** The settings before anybody changed them. */
    public static final Settings DEFAULTS =
            new Settings(
                    VERSION,
                    false,
                    SMALLEST_TEXT,
                    LeftOff.NOWHERE,
                    Optional.empty(),
                    Optional.empty(),
                    "me",
                    "");

    /** Clamps the text size, since a settings file can be edited by hand. */
    public Settings {
        textSize = Math.max(SMALLEST_TEXT, Math.min(LARGEST_TEXT, textSize));
    }

    /** The sums in use: those chosen, or the usual ones. */
    public SumsInUse sums() {
        return chosen.orElse(SumsInUse.USUAL);
    }

    /** The next larger text size; the same where it is the largest. */
    public int largerText() {
        return TEXT_SIZES.stream().filter(it -> it > textSize).findFirst().orElse(LARGEST_TEXT);
    }

    /** The next smaller text size; the same where it is the smallest. */
    public int smallerText() {
        return TEXT_SIZES.stream()
                .filter(it -> it < textSize)
                .reduce((smaller, larger) -> larger)
                .orElse(SMALLEST_TEXT);
    }

    public Settings withDark(final boolean value) {
        return new Settings(version, value, textSize, leftOff, window, chosen, person, language);
    }

    public Settings withTextSize(final int perCent) {
        return new Settings(version, dark, perCent, leftOff, window, chosen, person, language);
    }

    /** With another place to open the window at. */
    public Settings withLeftOff(final UnaryOperator<LeftOff> how) {
        return new Settings(
                version, dark, textSize, how.apply(leftOff), window, chosen, person, language);
    }

    public Settings withPlace(final String id) {
        return withLeftOff(it -> it.withPlace(id));
    }

    public Settings withWindow(final WindowBounds bounds) {
        return new Settings(
                version, dark, textSize, leftOff, Optional.of(bounds), chosen, person, language);
    }

    public Settings withSums(final SumsInUse sums) {
        return new Settings(
                version, dark, textSize, leftOff, window, Optional.of(sums), person, language);
    }

    public Settings withLanguage(final String code) {
        return new Settings(version, dark, textSize, leftOff, window, chosen, person, code);
    }

    public Settings withPerson(final String code) {
        return new Settings(version, dark, textSize, leftOff, window, chosen, code, language);
    }
}
