package wireworthy.lessons;

import java.util.List;

/**
 * A lesson, read.
 *
 * @param screens what is shown at a time, in reading order
 * @param problems what could not be used, in the order of the lines
 */
public record Lesson(LessonHeading heading, List<Screen> screens, List<LessonProblem> problems) {
    public Lesson {
        screens = List.copyOf(screens);
        problems = List.copyOf(problems);
    }

    /**
     * What stands between two lines of three dashes.
     *
     * @param line of its first block
     */
    public record Screen(int line, List<Block> blocks) {
        public Screen {
            blocks = List.copyOf(blocks);
        }
    }
}
