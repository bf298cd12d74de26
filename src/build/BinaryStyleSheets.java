import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javafx.css.Stylesheet;

/**
 * Puts beside each style sheet of a folder its binary form, which the toolkit prefers: the window
 * then opens without the parser of style sheets. Run by the build as a single source file.
 */
final class BinaryStyleSheets {
    private BinaryStyleSheets() {}

    public static void main(final String... folder) throws IOException {
        final List<Path> sheets;
        try (Stream<Path> files = Files.list(Path.of(folder[0]))) {
            sheets = files.filter(it -> it.toString().endsWith(".css")).toList();
        }
        for (final Path sheet : sheets) {
            final String name = sheet.getFileName().toString().replace(".css", ".bss");
            Stylesheet.convertToBinary(sheet.toFile(), sheet.resolveSibling(name).toFile());
        }
    }
}
