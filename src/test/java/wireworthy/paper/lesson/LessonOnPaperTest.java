package wireworthy.paper.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wireworthy.lessons.Lesson;
import wireworthy.lessons.LessonHeading;
import wireworthy.lessons.Lessons;
import wireworthy.paper.PaperSize;
import wireworthy.working.Solver;

/** A lesson on paper says what it says on the screen. */
class LessonOnPaperTest {
    private static final Solver SOLVER = new Solver();
    private static final Lessons LESSONS = Lessons.read(SOLVER, Optional.empty());
    private static final LessonOnPaper PAPER =
            new LessonOnPaper(SOLVER, figure -> "The figure " + figure.kind().id() + " says this.");

    static Stream<String> ids() {
        return LESSONS.contents().stream().map(LessonHeading::id);
    }

    private static byte[] pdf(final String id) {
        return PAPER.pdf(lesson(id), PaperSize.A4);
    }

    private static Lesson lesson(final String id) {
        return LESSONS.lesson(id).orElseThrow();
    }

    private static String text(final String id) throws IOException {
        final byte[] pdf = pdf(id);
        Files.write(
                Files.createDirectories(Path.of("target", "pages"))
                        .resolve("lesson-" + id + ".pdf"),
                pdf);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    @ParameterizedTest
    @MethodSource("ids")
    void hasTitleFigureCautionAndTheWordThatNobodyReviewedIt(final String id) throws IOException {
        assertThat(text(id))
                .contains(lesson(id).heading().title(), "says this.", "To try on the screen:")
                .contains("Take care", "Now you");
    }

    @Test
    void textListsTablesAndWorkingsStandInTheirOrder() throws IOException {
        assertThat(text("before-you-touch"))
                .containsSubsequence(
                        "Only twelve volts",
                        "Heat is.",
                        "A tool or a ring.",
                        "12.6 ÷ 0.005 = 2520 A",
                        "Whose work it is",
                        "a licensed gas fitter",
                        "Isolate before you work");
    }

    @Test
    void theSameLessonGivesTheSameBytes() {
        assertThat(pdf("power")).isEqualTo(pdf("power"));
    }
}
