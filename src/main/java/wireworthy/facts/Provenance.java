package wireworthy.facts;

import java.util.Arrays;
import java.util.Locale;
import wireworthy.texts.TextBundle;

/** How a figure came into the tables. */
public enum Provenance {
    /** Read in a published text. */
    READ("read"),
    /** Remembered, not yet seen in a text: to be checked before anyone relies on it. */
    MEMORY("from memory, unconfirmed"),
    /** What the trade does, with no text behind it. */
    COMMON_PRACTICE("common practice, no source");

    private static final TextBundle TEXTS = new TextBundle("provenance");

    /** As the tables have it. */
    private final String words;

    Provenance(final String words) {
        this.words = words;
    }

    /** The words that stand beside a figure. */
    public String words() {
        return TEXTS.of(name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }

    /**
     * The provenance that a table cell opens with; a remark may follow it.
     *
     * @throws IllegalArgumentException if the cell opens with none of the three
     */
    static Provenance opening(final String cell) {
        return Arrays.stream(values())
                .filter(each -> cell.startsWith(each.words))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("Not a known provenance: " + cell));
    }
}
