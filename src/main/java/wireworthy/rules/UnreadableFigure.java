package wireworthy.rules;

/** Ends a reading; the problem goes on from the typed text: "is not a number". */
final class UnreadableFigure extends Exception {

    private static final long serialVersionUID = 1L;

    private final String problem;

    UnreadableFigure(final String problem) {
        super(problem, null, false, false);
        this.problem = problem;
    }

    String problem() {
        return problem;
    }
}
