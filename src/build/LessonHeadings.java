import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import wireworthy.lessons.Headings;
import wireworthy.lessons.Lessons;
import wireworthy.working.Solver;

/**
 * Writes down the headings of the lessons that come with the program: the window then opens
 * without a reader of front matter. Run by the build as a single source file.
 */
final class LessonHeadings {
    private LessonHeadings() {}

    public static void main(final String... file) throws IOException {
        final Path written = Path.of(file[0]);
        Files.deleteIfExists(written);
        final Lessons lessons = Lessons.read(new Solver(), Optional.empty());
        Files.writeString(written, Headings.written(lessons.contents()));
    }
}
