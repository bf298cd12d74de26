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

/** The figures as lessons set them: those whose numbers the tests know before all others. */
final class BuiltInFigures {
    static final Solver SOLVER = new Solver();
    private static final Lessons LESSONS =
            Lessons.read(SOLVER, Optional.of(Path.of("src/test/resources/wireworthy/figures")));

    /** Lessons that tell a figure in full. */
    private static final List<String> FIRST = List.of("power", "floor-and-ceiling", "voltage-drop");

    /** Lessons kept for tests alone. */
    private static final List<String> KEPT = List.of("figures", "bank-and-day-figures");

    private BuiltInFigures() {}

    static Figure of(final FigureKind kind) {
        return Stream.concat(FIRST.stream(), LESSONS.contents().stream().map(LessonHeading::id))
                .flatMap(id -> in(id, kind))
                .findFirst()
                .orElseThrow();
    }

    /** The figure as it is kept for tests, so that no lesson changes its numbers. */
    static Figure kept(final FigureKind kind) {
        return KEPT.stream().flatMap(id -> in(id, kind)).findFirst().orElseThrow();
    }

    private static Stream<Figure> in(final String lessonId, final FigureKind kind) {
        return LESSONS.lesson(lessonId).stream()
                .flatMap(lesson -> lesson.screens().stream())
                .flatMap(screen -> screen.blocks().stream())
                .filter(Block.LiveFigure.class::isInstance)
                .map(block -> ((Block.LiveFigure) block).figure())
                .filter(figure -> figure.kind() == kind);
    }
}
