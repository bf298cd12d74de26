package wireworthy.rules;

import java.util.List;

/** Text as typed or pasted: its many look-alike characters brought to one of each. */
final class Typed {

    /** Longer text is no figure. */
    static final int LONGEST = 200;

    private static final int LONGEST_QUOTED = 40;
    private static final int FULL_WIDTH_SHIFT = 0xFEE0;
    private static final List<String> LEAD_INS =
            List.of("~", "≈", "=", "ca.", "ca ", "approx.", "approx ", "about ");

    private Typed() {}

    /** One kind of space, apostrophe, minus, dot and so on; no space at either end. */
    static String plain(final String typed) {
        final StringBuilder plain = new StringBuilder(typed.length() + 2);
        for (int i = 0; i < typed.length(); i++) {
            final char c = typed.charAt(i);
            if (c > ' ' && c < 0x7F) {
                plain.append(c == '`' ? '\'' : c);
            } else {
                plain.append(lookAlike(c));
            }
        }
        return plain.toString().strip();
    }

    private static String lookAlike(final char c) {
        return switch (c) {
            case '\u2019', '\u2018', '\u02BC', '\u2032', '\u00B4' -> "'";
            case '\u2033', '\u201C', '\u201D' -> "\"";
            case '\u2212', '\u2013', '\u2011' -> "-";
            case '\u2126', '\u03A9' -> "Ω";
            case '\u00B5', '\u03BC' -> "u";
            case '\u00D7' -> "x";
            case '\u22C5', '\u2219', '\u2022' -> "·";
            case '\u2044', '\u2215' -> "/";
            case '\u00BA', '\u02DA' -> "°";
            case '\u2103' -> "°C";
            case '\u2109' -> "°F";
            case '\u212A' -> "K";
            default -> spaceOrFullWidth(c);
        };
    }

    private static String spaceOrFullWidth(final char c) {
        if (c >= '\uFF01' && c <= '\uFF5E') {
            return plain(String.valueOf((char) (c - FULL_WIDTH_SHIFT)));
        }
        final boolean blank =
                Character.isSpaceChar(c)
                        || Character.isWhitespace(c)
                        || Character.getType(c) == Character.FORMAT;
        return blank ? " " : String.valueOf(c);
    }

    /** Without a leading "about" or equals sign in any of their usual forms. */
    static String withoutLeadIn(final String plain) {
        for (final String leadIn : LEAD_INS) {
            if (plain.regionMatches(true, 0, leadIn, 0, leadIn.length())) {
                return plain.substring(leadIn.length()).strip();
            }
        }
        return plain;
    }

    /** The typed text between quotation marks, at most 40 characters of it. */
    static String quoted(final String typed) {
        final StringBuilder shown = new StringBuilder("'");
        typed.codePoints()
                .limit(LONGEST_QUOTED)
                .map(c -> Character.isISOControl(c) ? ' ' : c)
                .forEach(shown::appendCodePoint);
        final boolean cut = typed.codePointCount(0, typed.length()) > LONGEST_QUOTED;
        return shown.append(cut ? "…'" : "'").toString();
    }
}
