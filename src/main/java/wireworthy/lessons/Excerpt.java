package wireworthy.lessons;

import tools.jackson.core.JacksonException;

/** What a message says of a block: a beginning short enough to show, and a line. */
final class Excerpt {
    private static final int LONGEST = 40;

    private Excerpt() {}

    /** The line of the file an error points at, which may lie past the end of its block. */
    static int line(final String block, final int linesBefore, final JacksonException e) {
        final int last = (int) Math.max(1, block.lines().count());
        return linesBefore + Math.max(1, Math.min(last, e.getLocation().getLineNr()));
    }

    static String of(final String text) {
        final String line = text.strip().lines().findFirst().orElse("");
        return line.length() <= LONGEST ? line : line.substring(0, LONGEST) + "...";
    }
}
