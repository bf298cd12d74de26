package wireworthy.window.evening;

import java.util.ArrayList;
import java.util.List;
import wireworthy.lessons.Block;
import wireworthy.lessons.Figure;
import wireworthy.lessons.Lesson;
import wireworthy.lessons.LessonHeading;
import wireworthy.lessons.Lessons;

/**
 * A live figure and the lesson it stands in.
 *
 * @param lesson its title
 */
record ProjectorFigure(String lesson, Figure figure) {
    /** What it is called. */
    String title() {
        return ProjectorTexts.of("figure." + figure.kind().id());
    }

    /** In a list: its lesson first, as several lessons have a figure of one kind. */
    String inList() {
        return lesson.equals(title())
                ? lesson
                : ProjectorTexts.of("figure.of", "figure", title(), "lesson", lesson);
    }

    /** All live figures, in the order of the lessons. Reads every lesson. */
    static List<ProjectorFigure> of(final Lessons lessons) {
        final List<ProjectorFigure> all = new ArrayList<>();
        for (final LessonHeading heading : lessons.contents()) {
            lessons.lesson(heading.id()).ifPresent(lesson -> add(lesson, all));
        }
        return List.copyOf(all);
    }

    private static void add(final Lesson lesson, final List<ProjectorFigure> all) {
        lesson.screens().stream()
                .flatMap(screen -> screen.blocks().stream())
                .filter(Block.LiveFigure.class::isInstance)
                .map(block -> ((Block.LiveFigure) block).figure())
                .forEach(figure -> all.add(new ProjectorFigure(lesson.heading().title(), figure)));
    }
}
