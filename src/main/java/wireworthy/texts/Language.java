package wireworthy.texts;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A language of the window, its lessons and problems. Files, the command line and everything that
 * is read back stay as they are in English.
 *
 * @param code its name in settings and folders, by ISO 639-1
 * @param name as it calls itself
 * @param decimal what parts the whole number from its fraction
 */
public record Language(String code, String name, char decimal) {
    /** The language of the sources; all that another one leaves out is shown in it. */
    public static final Language ENGLISH = new Language("en", "English", '.');

    private static final List<Language> ALL = List.of(ENGLISH, new Language("de", "Deutsch", ','));

    private static volatile Language inUse = ENGLISH;

    /** The languages one may choose. */
    public static List<Language> all() {
        return ALL;
    }

    /** The one of this code; where there is none, that of the machine, or English. */
    public static Language of(final String code) {
        return named(code).or(() -> named(Locale.getDefault().getLanguage())).orElse(ENGLISH);
    }

    private static Optional<Language> named(final String code) {
        return ALL.stream().filter(it -> it.code().equals(code)).findFirst();
    }

    /** The language texts are taken in; English until {@link #use} is called. */
    public static Language inUse() {
        return inUse;
    }

    /** Takes texts in this language from now on; what is on screen already stays as it is. */
    public static void use(final Language language) {
        inUse = language;
    }

    /** Whether it is the language of the sources, which nothing is laid over. */
    public boolean ofSources() {
        return code.equals(ENGLISH.code());
    }

    /** A number written with a point, as this language writes it. */
    public String number(final String withPoint) {
        return decimal == '.' ? withPoint : withPoint.replace('.', decimal);
    }

    /** By its code alone: what records come with takes a window that opens a while to load. */
    @Override
    public boolean equals(final @Nullable Object other) {
        return other instanceof Language language && code.equals(language.code);
    }

    @Override
    public int hashCode() {
        return code.hashCode();
    }
}
