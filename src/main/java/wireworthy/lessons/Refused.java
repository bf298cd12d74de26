package wireworthy.lessons;

/** A part of a lesson that can't be used; caught where the part ends, so that the rest loads. */
final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final int line;
    private final String remedy;

    Refused(final int line, final String message, final String remedy) {
        super(message, null, false, false);
        this.line = line;
        this.remedy = remedy;
    }

    LessonProblem in(final String file) {
        return new LessonProblem(file, line, String.valueOf(getMessage()), remedy);
    }
}
