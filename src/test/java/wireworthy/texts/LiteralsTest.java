package wireworthy.texts;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the window says stands in texts, where other languages find it. */
class LiteralsTest {
    private static final Path WINDOW = Path.of("src/main/java/wireworthy/window");
    private static final Pattern COMMENT = Pattern.compile("(?s)/\\*.*?\\*/|//[^\\n]*");
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\n]|\\\\.)*)\"");
    private static final Pattern STYLE = Pattern.compile("css|-fx-");

    /** A word one way or the other, said as it stands. */
    private static final Pattern EITHER = Pattern.compile("return [^;]*[?][^;]* : \"[a-z]{3,}\";");

    private static final Pattern WORDS = Pattern.compile("[A-Za-z]{3,}[,.:;]? |[ ][A-Za-z]{3,}");

    /** Shapes, styles and patterns; and what is read by those who mend the program. */
    private static final Set<String> NOT_SAID =
            Set.of(
                    "Icon.java",
                    "Symbol.java",
                    "Pretty.java",
                    "Looks.java",
                    "FixedText.java",
                    "Trouble.java",
                    "WireworthyApp.java");

    static List<Path> files() throws IOException {
        try (Stream<Path> files = Files.walk(WINDOW)) {
            return files.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> !NOT_SAID.contains(file.getFileName().toString()))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void nothingSaidIsALiteral(final Path file) throws IOException {
        final String code = COMMENT.matcher(Files.readString(file)).replaceAll("");
        final List<String> said =
                code.lines()
                        .filter(line -> !line.contains("Exception(") && !STYLE.matcher(line).find())
                        .flatMap(line -> LITERAL.matcher(line).results())
                        .map(literal -> literal.group(1))
                        .filter(text -> WORDS.matcher(text).find())
                        .toList();

        assertThat(said).as("put into texts/*.properties, from %s", file).isEmpty();
        assertThat(code).as("put into texts/*.properties").doesNotContainPattern(EITHER);
    }
}
