package wireworthy.window.figures;

/** What a figure shows at one setting of its handles. */
interface Told {
    /** All of it in sentences, for whoever does not see the drawing. */
    String words();
}
