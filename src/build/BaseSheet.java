import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javafx.css.Stylesheet;

/**
 * Cuts the base theme down to the controls the program has and puts it, in binary form, under the
 * name of the whole theme: what stands first on the class path is found, so that the window opens
 * without reading 800 rules for tables, charts and calendars. Run by the build as a single source
 * file.
 */
final class BaseSheet {
    private static final String THEME = "atlantafx/base/theme/primer-light";
    private static final Pattern COMMENT = Pattern.compile("(?s)/\\*.*?\\*/");
    private static final Pattern RULE = Pattern.compile("([^{}]+)(\\{[^{}]*})");
    private static final Pattern CLASS = Pattern.compile("\\.([\\w-]+)");
    private static final Pattern PARTS = Pattern.compile("[\\s>]");

    private final Set<String> kept;

    private BaseSheet(final Set<String> kept) {
        this.kept = kept;
    }

    /**
     * @param arguments the file that lists style classes to keep, a line each; the folder of the
     *     compiled classes
     */
    public static void main(final String... arguments) throws IOException {
        final Set<String> kept = new HashSet<>(Files.readAllLines(Path.of(arguments[0])));
        final Path target = Path.of(arguments[1], THEME + ".bss");
        final Path cut = Files.createTempFile("base", ".css");
        Files.writeString(cut, new BaseSheet(kept).cut(theme()));
        Files.createDirectories(target.getParent());
        Stylesheet.convertToBinary(cut.toFile(), target.toFile());
        Files.delete(cut);
    }

    private static String theme() {
        try (InputStream file = BaseSheet.class.getResourceAsStream("/" + THEME + ".css")) {
            return new String(Objects.requireNonNull(file).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private String cut(final String theme) {
        return RULE.matcher(COMMENT.matcher(theme).replaceAll(""))
                .results()
                .map(it -> rule(it.group(1), it.group(2)))
                .collect(Collectors.joining("\n"));
    }

    private String rule(final String selectors, final String body) {
        final String left =
                Arrays.stream(selectors.split(","))
                        .map(String::strip)
                        .filter(this::isKept)
                        .collect(Collectors.joining(", "));
        return left.isEmpty() ? "" : left + " " + body;
    }

    /** A selector is kept or not by the control it begins with; the parts of that belong to it. */
    private boolean isKept(final String selector) {
        final String control = PARTS.split(selector, 2)[0];
        return CLASS.matcher(control).results().allMatch(it -> kept.contains(it.group(1)));
    }
}
