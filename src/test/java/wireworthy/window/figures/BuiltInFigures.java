package wireworthy.window.figures;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wireworthy.lessons.Block;
import wireworthy.lessons.Figure;
import wireworthy.lessons.FigureKind;
import wireworthy.lessons.LessonHeading;
import wireworthy.lessons.Lessons;
import wireworthy.working.Solver;

/** The figures as lessons set them: those of the program first, then those kept for tests. */
final class BuiltInFigures {
    static final Solver SOLVER = new Solver();
    private static final Lessons LESSONS =
            Lessons.read(SOLVER, Optional.of(Path.of("src/test/resources/wireworthy/figures")));

    /** Where a figure is told in full; other lessons show it with fewer handles. */
    private static final List<String> TELLING =
            List.of("power", "floor-and-ceiling", "voltage-drop");

    private BuiltInFigures() {}

    static Figure of(final FigureKind kind) {
        return Stream.concat(TELLING.stream(), LESSONS.contents().stream().map(LessonHeading::id))
                .flatMap(id -> LESSONS.lesson(id).stream())
                .flatMap(lesson -> lesson.screens().stream())
                .flatMap(screen -> screen.blocks().stream())
                .filter(Block.LiveFigure.class::isInstance)
                .map(block -> ((Block.LiveFigure) block).figure())
                .filter(figure -> figure.kind() == kind)
                .findFirst()
                .orElseThrow();
    }
}
