package wireworthy.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wireworthy.lessons.LessonHeading;
import wireworthy.lessons.Lessons;
import wireworthy.working.Solver;

/** The evenings to start from can be printed and shown as they stand. */
class EveningsTest {
    private static final Pattern LESSON = Pattern.compile("`lesson:([a-z-]+)`");

    @TempDir Path folder;

    static List<Path> evenings() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("evenings"))) {
            return files.filter(file -> file.getFileName().toString().startsWith("0"))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("evenings")
    void thePapersCanBePrinted(final Path evening) throws IOException {
        final List<String> commands =
                Files.readAllLines(evening).stream()
                        .filter(line -> line.startsWith("    sheet "))
                        .map(line -> line.strip().replaceAll("--out \\S+", "--out " + folder))
                        .toList();
        assertThat(commands).hasSize(1);
        assertThat(WireworthyCommand.line(any -> {}).execute(commands.get(0).split(" "))).isZero();
        assertThat(folder).isDirectoryContaining("glob:**-slip-finder.pdf");
    }

    @ParameterizedTest
    @MethodSource("evenings")
    void theLessonsToShowAreThere(final Path evening) throws IOException {
        final List<String> ids =
                Lessons.read(new Solver(), Optional.empty()).contents().stream()
                        .map(LessonHeading::id)
                        .toList();
        final List<String> shown =
                LESSON.matcher(Files.readString(evening))
                        .results()
                        .map(found -> found.group(1))
                        .toList();
        assertThat(shown).isNotEmpty().isSubsetOf(ids);
    }
}
