package wireworthy.rules;

import java.util.BitSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Keeps a figure on one line with its unit, and the parts of a unit together. */
public final class FigureAndUnit {
    private static final Pattern FIGURE_AND_UNIT =
            Pattern.compile("(?<=\\d) (?=(?:[kmµ]?[AVWΩ]h?|[cm]?m²?|°C|%|AWG|ohm)(?![A-Za-z]))");
    private static final Pattern INSIDE = Pattern.compile(FIGURE_AND_UNIT.pattern() + "|°(?=[CF])");

    private FigureAndUnit() {}

    /** The text with blanks that do not break between figures and units. */
    public static String kept(final String text) {
        return FIGURE_AND_UNIT.matcher(text).replaceAll("\u00a0");
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
