package wireworthy.lessons;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wireworthy.practice.ContentFiles;
import wireworthy.working.Solver;

/** The build writes the headings down; they have to say what the lessons themselves say. */
class HeadingsTest {
    @Test
    void theHeadingsWrittenDownAreThoseOfTheFrontMatter() {
        final List<LessonHeading> read =
                Lessons.of(new Solver(), ContentFiles.builtIn("lessons", ".md")).contents();

        assertThat(Headings.builtIn()).isEqualTo(read).isNotEmpty();
    }

    @Test
    void whatIsWrittenIsReadAsItWas() {
        final List<LessonHeading> some =
                Lessons.of(new Solver(), ContentFiles.builtIn("lessons", ".md")).contents();

        assertThat(Headings.read(Headings.written(some))).isEqualTo(some);
    }

    @Test
    void theFirstScreenAloneIsTheFirstOfTheWholeLesson() {
        final Lessons lessons = Lessons.read(new Solver(), Optional.empty());

        assertThat(lessons.contents())
                .allSatisfy(
                        it ->
                                assertThat(lessons.opening(it.id()).orElseThrow().screens().get(0))
                                        .usingRecursiveComparison()
                                        .isEqualTo(
                                                lessons.lesson(it.id())
                                                        .orElseThrow()
                                                        .screens()
                                                        .get(0)));
    }
}
