package wireworthy.lessons;

/** The beginning of a text from a file, short enough for a message. */
final class Excerpt {
    private static final int LONGEST = 40;

    private Excerpt() {}

    static String of(final String text) {
        final String line = text.strip().lines().findFirst().orElse("");
        return line.length() <= LONGEST ? line : line.substring(0, LONGEST) + "...";
    }
}
