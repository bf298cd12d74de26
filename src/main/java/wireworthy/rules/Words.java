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
}
