package wireworthy.window;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.Arrays;
import java.util.Locale;

/**
 * An unexpected error as it is told.
 *
 * @param code short and the same each time the same thing goes wrong in the same place
 * @param details what a developer needs; written to the log and copied on demand, never shown
 */
record Trouble(String code, String details) {
    private static final int CODE_LENGTH = 5;

    /** Tells an exception. */
    static Trouble of(final Throwable error) {
        final Throwable cause = root(error);
        return new Trouble(code(cause), details(cause, error));
    }

    private static String code(final Throwable cause) {
        final String where =
                Arrays.stream(cause.getStackTrace())
                        .filter(it -> it.getClassName().startsWith("wireworthy."))
                        .findFirst()
                        .map(it -> it.getClassName() + "." + it.getMethodName())
                        .orElse("");
        final int hash = (cause.getClass().getName() + " " + where).hashCode();
        final String digits = Long.toString(Integer.toUnsignedLong(hash), Character.MAX_RADIX);
        final String padded = "0".repeat(CODE_LENGTH) + digits;
        return padded.substring(padded.length() - CODE_LENGTH).toUpperCase(Locale.ROOT);
    }

    private static String details(final Throwable cause, final Throwable error) {
        final StringWriter text = new StringWriter();
        error.printStackTrace(new PrintWriter(text));
        return "Code "
                + code(cause)
                + "\nJava "
                + System.getProperty("java.version")
                + ", "
                + System.getProperty("os.name")
                + "\n"
                + text;
    }

    private static Throwable root(final Throwable error) {
        Throwable cause = error;
        for (Throwable next = cause.getCause(); next != null; next = next.getCause()) {
            cause = next;
        }
        return cause;
    }
}
