package wireworthy.facts;

/**
 * Where a figure was published.
 *
 * @param title the publication, with the table or clause
 */
public record Source(String title, Provenance provenance) {

    /** The title, followed by its standing unless it was read: "33 CFR 183.425 Table 5". */
    public String text() {
        final String said = said();
        return provenance == Provenance.READ ? said : said + " (" + provenance.words() + ")";
    }

    /** The title in the language in use; that of a publication stays as published. */
    public String said() {
        return TableWords.of(title);
    }
}
