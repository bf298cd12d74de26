package wireworthy.evening;

/** Why something for the evening can't be made or read, in plain words. */
public final class EveningProblem extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final String remedy;

    /**
     * @param what what is wrong, without a full stop
     * @param remedy what to do, without a full stop
     */
    public EveningProblem(final String what, final String remedy) {
        super(what, null, false, false);
        this.remedy = remedy;
    }

    /** What is wrong, without a full stop. */
    public String what() {
        return String.valueOf(getMessage());
    }

    /** What to do, without a full stop. */
    public String remedy() {
        return remedy;
    }

    /** Both, as sentences. */
    public String text() {
        return what() + ". " + remedy + ".";
    }
}
