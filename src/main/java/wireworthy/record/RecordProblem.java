package wireworthy.record;

/** Why the record can't be read or written, in plain words; the program can go on without it. */
public final class RecordProblem extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final String remedy;

    RecordProblem(final String what, final String remedy, final Throwable cause) {
        super(what, cause);
        this.remedy = remedy;
    }

    RecordProblem(final String what, final String remedy) {
        super(what);
        this.remedy = remedy;
    }

    /** What is wrong. */
    public String what() {
        return String.valueOf(getMessage());
    }

    /** What to do. */
    public String remedy() {
        return remedy;
    }
}
