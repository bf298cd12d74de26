package wireworthy.rules;

/** Ends a reading; the message goes on from the typed text: "is not a number". */
final class UnreadableFigure extends Exception {

    private static final long serialVersionUID = 1L;

    UnreadableFigure(final String message) {
        super(message, null, false, false);
    }
}
