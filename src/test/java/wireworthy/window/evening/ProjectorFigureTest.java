package wireworthy.window.evening;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wireworthy.lessons.Lessons;
import wireworthy.working.Solver;

/** The list of live figures, from which one is thrown on the wall. */
class ProjectorFigureTest {
    private static final List<ProjectorFigure> ALL =
            ProjectorFigure.of(Lessons.read(new Solver(), Optional.empty()));

    @Test
    void eachIsToldFromEveryOtherByItsFirstWords() {
        assertThat(ALL)
                .extracting(ProjectorFigure::inList)
                .doesNotHaveDuplicates()
                .allSatisfy(name -> assertThat(name).matches("(?!(.+): \\1$).+"));
        assertThat(ALL).allSatisfy(it -> assertThat(it.inList()).startsWith(it.lesson()));
    }
}
