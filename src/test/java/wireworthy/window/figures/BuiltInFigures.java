package wireworthy.window.figures;

import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import wireworthy.lessons.Block;
import wireworthy.lessons.Figure;
import wireworthy.lessons.FigureKind;
import wireworthy.lessons.Lessons;
import wireworthy.working.Solver;

/** The figures as the lessons of the program set them; else as the lesson beside the tests does. */
final class BuiltInFigures {
    static final Solver SOLVER = new Solver();
    private static final Lessons LESSONS = Lessons.read(SOLVER, Optional.of(beside()));

    private BuiltInFigures() {}

    private static Path beside() {
        try {
            final URL lesson = BuiltInFigures.class.getResource("figures.md");
            return Path.of(Objects.requireNonNull(lesson).toURI()).getParent();
        } catch (final URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    static Figure of(final FigureKind kind) {
        return LESSONS.contents().stream()
                .flatMap(heading -> LESSONS.lesson(heading.id()).stream())
                .flatMap(lesson -> lesson.screens().stream())
                .flatMap(screen -> screen.blocks().stream())
                .filter(Block.LiveFigure.class::isInstance)
                .map(block -> ((Block.LiveFigure) block).figure())
                .filter(figure -> figure.kind() == kind)
                .findFirst()
                .orElseThrow();
    }
}
