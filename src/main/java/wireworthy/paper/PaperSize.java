package wireworthy.paper;

/** The sizes of paper that pages are made for. */
public enum PaperSize {
    A4("210mm 297mm"),
    LETTER("8.5in 11in");

    private final String lengths;

    PaperSize(final String lengths) {
        this.lengths = lengths;
    }

    /** As CSS writes it. */
    String css() {
        return lengths;
    }
}
