package wireworthy.window;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wireworthy.texts.Keys;
import wireworthy.texts.Language;

/**
 * A language made from the English texts, each a third longer, with accents and in brackets: what
 * has no room for it has none for most languages.
 */
final class Pseudo {
    static final Language LANGUAGE = new Language("qq", "Pseudo", ',');

    private static final Path TEXTS = Path.of("src/main/resources/wireworthy/texts");
    private static final Pattern PART = Pattern.compile("\\{[^}]*}|[^{]+");
    private static final String PLAIN = "aeiouAEIOUcn";
    private static final String ACCENTED = "àéîöüÀÉÎÖÜçñ";
    private static final double LONGER = 0.35;

    private Pseudo() {}

    /** Writes its texts where the program finds them. */
    static void write() throws IOException {
        final Path folder = Path.of("target/test-classes/wireworthy/texts", LANGUAGE.code());
        Files.createDirectories(folder);
        try (Stream<Path> files = Files.list(TEXTS)) {
            for (final Path file : files.filter(Files::isRegularFile).toList()) {
                final String name = file.getFileName().toString();
                Files.writeString(folder.resolve(name), texts(name.replace(".properties", "")));
            }
        }
    }

    private static String texts(final String name) {
        return Keys.texts(name).entrySet().stream()
                .map(each -> each.getKey() + "=" + escaped(text(each.getKey(), each.getValue())))
                .collect(Collectors.joining("\n"));
    }

    /** Lists of words stay lists of as many words. */
    private static String text(final String key, final String english) {
        return key.equals("months") || key.equals("lamps.kinds") ? english : longer(english);
    }

    static String longer(final String english) {
        final StringBuilder text = new StringBuilder();
        final Matcher parts = PART.matcher(english);
        int letters = 0;
        while (parts.find()) {
            final boolean place = parts.group().startsWith("{");
            text.append(place ? parts.group() : accented(parts.group()));
            letters += place ? 0 : parts.group().strip().length();
        }
        final String more = "~".repeat((int) Math.ceil(letters * LONGER));
        return letters < 2 ? english : "[" + text + spaced(more) + "]";
    }

    /** In words, as a long text is. */
    private static String spaced(final String more) {
        return more.replaceAll("(.{7})(?=.)", " $1");
    }

    private static String accented(final String text) {
        return text.chars().mapToObj(Pseudo::accented).collect(Collectors.joining());
    }

    private static String accented(final int letter) {
        final int at = PLAIN.indexOf(letter);
        return String.valueOf(at < 0 ? (char) letter : ACCENTED.charAt(at));
    }

    private static String escaped(final String text) {
        return text.replace("\\", "\\\\").replace("\n", "\\n").replaceFirst("^ ", "\\\\u0020");
    }
}
