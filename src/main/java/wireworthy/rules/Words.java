package wireworthy.rules;

import wireworthy.texts.TextBundle;

/** The names of quantities, skills and rules in words. */
public final class Words {
    private static final TextBundle NAMES = new TextBundle("names");

    private Words() {}

    /** The name of a quantity, skill or rule; its id with blanks where the bundle has none. */
    public static String of(final String id) {
        return NAMES.has(id) ? NAMES.of(id) : id.replace('-', ' ');
    }

    /** The name of a quantity in English whatever the language in use, for files. */
    public static String inFiles(final String id) {
        return NAMES.inFiles(id).orElseGet(() -> id.replace('-', ' '));
    }

    /** What a rule minds, in a few words, such as "out and back". */
    public static String ofRule(final String id) {
        final String key = "rule." + id;
        return NAMES.of(NAMES.has(key) ? key : "rule");
    }
}
