package wireworthy.texts;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Every language has the same texts, with the same places, each once; and each is used. */
class LanguagesTest {
    private static final Path SOURCES = Path.of("src/main/java");
    private static final Path TEXTS = Path.of("src/main/resources/wireworthy/texts");
    private static final Pattern PLACE = Pattern.compile("\\{[a-z0-9-]+}");
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");

    private static final Pattern CONSTANT = Pattern.compile("\\b[A-Z][A-Z_]+\\b");

    /** Put together from ids of the rules; tests of their own look at them. */
    private static final Set<String> BY_ID = Set.of("glossary", "names", "slips");

    /** English stands beside what it belongs to. */
    private static final Set<String> PHRASES = Set.of("formulas", "units", "tables", "titles");

    static Stream<String> files() throws IOException {
        return names(TEXTS).stream();
    }

    static Stream<Arguments> translations() throws IOException {
        final List<Arguments> all = new ArrayList<>();
        for (final Language language : Language.all()) {
            if (!language.ofSources()) {
                names(TEXTS).forEach(name -> all.add(Arguments.of(language.code(), name)));
            }
        }
        return all.stream();
    }

    static Stream<Path> everyFile() throws IOException {
        try (Stream<Path> files = Files.walk(TEXTS)) {
            return files.filter(file -> file.toString().endsWith(".properties")).toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("translations")
    void nothingIsMissing(final String code, final String name) {
        final Set<String> missing = new TreeSet<>(Keys.of(name));
        missing.removeAll(Keys.of(code + "/" + name));

        assertThat(missing)
                .as("add to texts/%s/%s.properties:%n%s", code, name, lines(name, missing))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("translations")
    void nothingIsLeftOver(final String code, final String name) {
        final Set<String> left = new TreeSet<>(Keys.of(code + "/" + name));
        left.removeAll(Keys.of(name));

        assertThat(name.equals("names") ? Set.of() : left)
                .as("take out of texts/%s/%s.properties, or add to the English", code, name)
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("translations")
    void thePlacesAreTheSame(final String code, final String name) {
        final Map<String, String> english = Keys.texts(name);
        Keys.texts(code + "/" + name)
                .forEach(
                        (key, text) ->
                                assertThat(places(text))
                                        .as("in texts/%s/%s.properties, %s", code, name, key)
                                        .isEqualTo(places(english.getOrDefault(key, text))));
    }

    @ParameterizedTest
    @MethodSource("everyFile")
    void noKeyStandsTwice(final Path file) throws IOException {
        final Set<String> seen = new HashSet<>();
        final List<String> twice =
                Files.readAllLines(file).stream()
                        .filter(line -> line.matches("[a-zA-Z0-9].*?=.*"))
                        .map(line -> line.replaceFirst(" *=.*", ""))
                        .filter(key -> !seen.add(key))
                        .toList();

        assertThat(twice).as("take one of each out of %s", file).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("files")
    void everyTextIsUsed(final String name) throws IOException {
        if (BY_ID.contains(name)) {
            return;
        }
        final Set<String> literals = literals();
        final Set<String> unused =
                Keys.of(name).stream()
                        .filter(key -> !used(key, literals))
                        .collect(Collectors.toCollection(TreeSet::new));

        assertThat(unused).as("take out of texts/%s.properties in every language", name).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("translations")
    void noFileIsForgotten(final String code, final String name) throws IOException {
        final Set<String> spoken = new TreeSet<>(names(TEXTS.resolve(code)));
        spoken.removeAll(PHRASES);

        assertThat(names(TEXTS)).containsAll(spoken);
        assertThat(spoken).as("write texts/%s/%s.properties", code, name).contains(name);
    }

    /** As a whole, as a constant, or put together from a beginning or an end in the code. */
    private static boolean used(final String key, final Set<String> literals) {
        return literals.contains(key)
                || literals.contains(key.toUpperCase(Locale.ROOT).replace('-', '_'))
                || prefixes(key).anyMatch(literals::contains)
                || literals.stream().anyMatch(it -> it.startsWith(".") && key.endsWith(it));
    }

    private static Stream<String> prefixes(final String key) {
        return Stream.iterate(1, i -> i < key.length(), i -> i + 1)
                .filter(i -> ".-".indexOf(key.charAt(i - 1)) >= 0)
                .flatMap(i -> Stream.of(key.substring(0, i), key.substring(0, i - 1)));
    }

    private static Set<String> literals() throws IOException {
        try (Stream<Path> files = Files.walk(SOURCES)) {
            final Set<String> found = new HashSet<>();
            for (final Path file : files.filter(it -> it.toString().endsWith(".java")).toList()) {
                final String code = Files.readString(file);
                LITERAL.matcher(code).results().forEach(it -> found.add(it.group(1)));
                CONSTANT.matcher(code).results().forEach(it -> found.add(it.group()));
            }
            found.remove(".");
            return found;
        }
    }

    private static Set<String> places(final String text) {
        return PLACE.matcher(text)
                .results()
                .map(it -> it.group())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String lines(final String name, final Set<String> keys) {
        final Map<String, String> english = Keys.texts(name);
        return keys.stream()
                .map(key -> key + "=" + english.get(key))
                .collect(Collectors.joining("\n"));
    }

    private static List<String> names(final Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".properties"))
                    .map(name -> name.replace(".properties", ""))
                    .sorted()
                    .toList();
        }
    }
}
