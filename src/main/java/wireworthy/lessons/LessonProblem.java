package wireworthy.lessons;

/**
 * Something in a lesson file that can't be used; everything else in the file can.
 *
 * @param file name of the file
 * @param line counted from 1
 * @param message what is wrong
 * @param remedy what to do about it
 */
public record LessonProblem(String file, int line, String message, String remedy) {
    /** The whole of it on one line: "12-voltage-drop.md, line 12: ...". */
    public String text() {
        return "%s, line %d: %s. %s".formatted(file, line, message, remedy);
    }
}
