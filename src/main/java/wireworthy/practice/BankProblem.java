package wireworthy.practice;

import wireworthy.texts.TextBundle;

/**
 * Something in a bank that can't be used.
 *
 * @param file name of the file
 * @param line counted from 1; 0 where the whole file is meant
 * @param message what is wrong
 * @param remedy what to do
 */
public record BankProblem(String file, int line, String message, String remedy) {
    private static final TextBundle TEXTS = new TextBundle("entries");

    /** In one line, for a list of problems. */
    public String text() {
        final String place = line == 0 ? file : TEXTS.of("at", "file", file, "line", line);
        return place + ": " + message + ". " + remedy + ".";
    }
}
