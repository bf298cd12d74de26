package wireworthy.working;

/** A question, or a part of one, that can't be read or worked. */
public final class Unworkable extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final String where;

    /**
     * @param where a path in the question, such as {@code given.one-way-length}
     * @param message what is wrong and what to do
     */
    public Unworkable(final String where, final String message) {
        super(message, null, false, false);
        this.where = where;
    }

    public String where() {
        return where;
    }

    /** What is wrong and what to do. */
    public String what() {
        return String.valueOf(getMessage());
    }
}
