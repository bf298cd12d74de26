package wireworthy.lessons;

import java.util.List;

/**
 * A lesson file in its two parts.
 *
 * @param file name of the file
 * @param frontMatter between the first two lines of three dashes; empty where there are none
 * @param body the lesson itself
 * @param linesBefore how many lines of the file stand before the body
 */
record LessonText(String file, String frontMatter, String body, int linesBefore) {
    private static final int LARGEST = 1 << 20;

    private static final String DASHES = "---";
    private static final String FENCE = "```";

    /**
     * Takes a file apart.
     *
     * @throws Refused if it is too large
     */
    static LessonText of(final String file, final String text) {
        if (text.length() > LARGEST) {
            throw new Refused(1, "The file is larger than 1 MB", "Part it into several lessons.");
        }
        final List<String> lines = text.lines().toList();
        final int end = endOfFrontMatter(lines);
        return new LessonText(
                file,
                String.join("\n", lines.subList(Math.min(1, end), end)),
                String.join("\n", lines.subList(end == 0 ? 0 : end + 1, lines.size())),
                end == 0 ? 0 : end + 1);
    }

    /** Index of the line that ends the front matter; 0 where there is none. */
    private static int endOfFrontMatter(final List<String> lines) {
        if (lines.isEmpty() || !dashes(lines.get(0))) {
            return 0;
        }
        for (int i = 1; i < lines.size(); i++) {
            if (dashes(lines.get(i))) {
                return i;
            }
        }
        return 0;
    }

    /** With its first screen alone and the line that ends it; whole where a fence stands there. */
    LessonText toFirstBreak() {
        final int end = body.indexOf("\n" + DASHES);
        return end < 0 || body.substring(0, end).contains(FENCE)
                ? this
                : new LessonText(
                        file, frontMatter, body.substring(0, end) + "\n" + DASHES, linesBefore);
    }

    private static boolean dashes(final String line) {
        return line.stripTrailing().equals(DASHES);
    }
}
