package wireworthy.window;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;

/** Texts of the tables with the signs people know: the files keep to plain letters. */
final class Pretty {
    private static final Pattern FIGURE = Pattern.compile("[-−]?\\d+([.,]\\d+)?([eE]-?\\d+)?");
    private static final Map<Pattern, String> SIGNS = signs();

    private Pretty() {}

    private static Map<Pattern, String> signs() {
        final Map<Pattern, String> signs = new LinkedHashMap<>();
        signs.put(Pattern.compile("\\bohm mm2/m\\b"), "Ω·mm²/m");
        signs.put(Pattern.compile("\\bmohm\\b"), "mΩ");
        signs.put(Pattern.compile("(?<=\\d )ohm\\b|\\bohm(?=/)|(?<=, )ohm\\b"), "Ω");
        signs.put(Pattern.compile("\\bmm2\\b"), "mm²");
        signs.put(Pattern.compile("\\bmm3\\b"), "mm³");
        signs.put(Pattern.compile("\\bm2\\b"), "m²");
        signs.put(Pattern.compile("\\bdegC\\b"), "°C");
        signs.put(Pattern.compile("\\bdegF\\b"), "°F");
        signs.put(Pattern.compile("(?<=\\d) x (?=\\d|mm)"), " × ");
        return signs;
    }

    /** The text with its units in their usual signs. */
    static String units(final String plain) {
        String pretty = plain;
        for (final Map.Entry<Pattern, String> sign : SIGNS.entrySet()) {
            pretty = sign.getKey().matcher(pretty).replaceAll(sign.getValue());
        }
        return pretty;
    }

    /** Whether a text is one number and nothing else. */
    static boolean isFigure(final String text) {
        return FIGURE.matcher(text).matches();
    }
}
