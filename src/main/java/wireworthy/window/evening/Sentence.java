package wireworthy.window.evening;

/** Words that further sentences follow. */
final class Sentence {
    private static final String ENDS = ".?!";

    private Sentence() {}

    /** The words with a full stop, where they don't end one already. */
    static String of(final String words) {
        final boolean ended =
                words.isEmpty() || ENDS.indexOf(words.charAt(words.length() - 1)) >= 0;
        return ended ? words : words + ".";
    }
}
