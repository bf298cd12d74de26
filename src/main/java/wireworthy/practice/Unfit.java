package wireworthy.practice;

/** An entry of a file that can't be used. */
public final class Unfit extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final String pointer;
    private final String remedy;

    /**
     * @param pointer JSON pointer to the entry
     * @param message what is wrong, without a full stop
     * @param remedy what to do, without a full stop
     */
    public Unfit(final String pointer, final String message, final String remedy) {
        super(message, null, false, false);
        this.pointer = pointer;
        this.remedy = remedy;
    }

    /** JSON pointer to the entry. */
    public String pointer() {
        return pointer;
    }

    /** What is wrong, without a full stop. */
    public String what() {
        return String.valueOf(getMessage());
    }

    /** What to do, without a full stop. */
    public String remedy() {
        return remedy;
    }

    BankProblem in(final String file, final Located json) {
        return new BankProblem(file, json.line(pointer), what(), remedy);
    }
}
