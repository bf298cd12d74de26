package wireworthy.rules;

import java.util.ResourceBundle;

/** The names of quantities, skills and rules in words. */
public final class Words {
    private static final ResourceBundle NAMES = ResourceBundle.getBundle("wireworthy.texts.names");

    private Words() {}

    /** The name of a quantity, skill or rule; its id with blanks where the bundle has none. */
    public static String of(final String id) {
        return NAMES.containsKey(id) ? NAMES.getString(id) : id.replace('-', ' ');
    }

    /** What a rule minds, in a few words, such as "out and back". */
    public static String ofRule(final String id) {
        final String key = "rule." + id;
        return NAMES.getString(NAMES.containsKey(key) ? key : "rule");
    }
}
