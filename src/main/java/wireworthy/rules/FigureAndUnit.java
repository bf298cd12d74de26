package wireworthy.rules;

import java.util.BitSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Keeps a figure on one line with its unit, the parts of a unit together, and the number of a
 * standard with its body: "300 Ah", "ISO 8820-3".
 */
public final class FigureAndUnit {
    private static final String UNITS =
            "[kmµ]?[AVWΩ]h?|[kcm]?m[²³]?|[kmM]?ohm|mm2|h|s|min|°[CF]|%|AWG|CFR";
    private static final String BODIES = "BS|EN|IEC|ISO|CFR";

    /** The blank comes first, so that no other sign is looked at twice. */
    private static final Pattern TOGETHER =
            Pattern.compile(
                    " (?:(?<=\\d )(?=(?:%s)(?![A-Za-z]))|(?<=\\b(?:%s) )(?=\\d))"
                            .formatted(UNITS, BODIES));

    private static final Pattern INSIDE = Pattern.compile(TOGETHER.pattern() + "|°(?=[CF])");

    private FigureAndUnit() {}

    /** The text with blanks that do not break where it belongs together. */
    public static String kept(final String text) {
        return TOGETHER.matcher(text).replaceAll("\u00a0");
    }

    /** The places at which a line must not end: before the sign of that number, from 0. */
    public static BitSet inside(final String text) {
        final BitSet places = new BitSet();
        final Matcher found = INSIDE.matcher(text);
        while (found.find()) {
            places.set(found.end());
        }
        return places;
    }
}
