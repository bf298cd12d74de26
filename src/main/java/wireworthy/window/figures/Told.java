package wireworthy.window.figures;

/** What a figure shows at one setting of its handles. */
interface Told {
    /** All of it in sentences, for whoever does not see the drawing. */
    String words();

    /** A line made the beginning of a sentence. */
    static String capital(final String line) {
        return Character.toUpperCase(line.charAt(0)) + line.substring(1);
    }
}
