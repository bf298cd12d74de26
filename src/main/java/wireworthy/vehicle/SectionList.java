package wireworthy.vehicle;

import java.util.List;
import java.util.regex.Pattern;

/**
 * Sections as typed one after the other. In the file they are a list, as in a question; taken apart
 * and put together again they are what was typed.
 */
final class SectionList {
    private static final String MARK = ";";
    private static final Pattern BETWEEN = Pattern.compile(";|, |\\n");

    private SectionList() {}

    /** The sections one by one; a comma with a blank behind it parts them too. */
    static List<String> parts(final String typed) {
        return BETWEEN.splitAsStream(typed).map(String::strip).filter(it -> !it.isEmpty()).toList();
    }

    /** The entries of the list in the file. */
    static List<String> written(final String typed) {
        return List.of(typed.split(MARK, -1));
    }

    /** The text of the entries of a list. */
    static String typed(final List<String> written) {
        return String.join(MARK, written);
    }
}
