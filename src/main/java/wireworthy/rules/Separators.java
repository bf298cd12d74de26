package wireworthy.rules;

import java.math.BigDecimal;
import java.util.List;
import wireworthy.texts.Language;

/**
 * What the points, commas, spaces and apostrophes inside a number mean. A point is always decimal.
 * A comma before exactly three digits could be decimal or a thousands separator, unless only zeros
 * stand before it, or the language in use writes its fractions so.
 */
final class Separators {

    private static final int GROUP = 3;

    private Separators() {}

    /** One or two meanings, the decimal one first; none where the marks contradict each other. */
    static List<BigDecimal> meanings(final String number) {
        final String digits = withoutGaps(number);
        if (digits.isEmpty()) {
            return List.of();
        }
        final boolean gaps = digits.length() != number.length();
        final int point = digits.indexOf('.');
        final int comma = digits.indexOf(',');
        if (comma < 0) {
            return point == digits.lastIndexOf('.') ? decimal(digits) : List.of();
        }
        if (point >= 0 || comma != digits.lastIndexOf(',')) {
            return gaps ? List.of() : thousands(digits, point < 0 ? digits.length() : point);
        }
        return gaps ? decimal(digits.replace(',', '.')) : oneComma(digits, comma);
    }

    private static List<BigDecimal> oneComma(final String digits, final int comma) {
        final BigDecimal decimal = new BigDecimal(digits.replace(',', '.'));
        final boolean threeFollow = digits.length() - comma - 1 == GROUP;
        if (!threeFollow
                || Language.inUse().decimal() == ','
                || onlyZeros(digits.substring(0, comma))) {
            return List.of(decimal);
        }
        return List.of(decimal, new BigDecimal(digits.replace(",", "")));
    }

    private static List<BigDecimal> thousands(final String digits, final int end) {
        final boolean sound = digits.indexOf('.', end + 1) < 0 && digits.indexOf(',', end) < 0;
        return sound && isGrouped(digits.substring(0, end), ',')
                ? decimal(digits.replace(",", ""))
                : List.of();
    }

    private static List<BigDecimal> decimal(final String digits) {
        return List.of(new BigDecimal(digits));
    }

    /** Spaces or apostrophes taken out; empty where they do not part groups of three. */
    private static String withoutGaps(final String number) {
        final char gap = number.indexOf(' ') >= 0 ? ' ' : '\'';
        if (number.indexOf(gap) < 0) {
            return number;
        }
        final int end = wholeEnd(number);
        final boolean sound =
                number.indexOf(gap, end) < 0 && isGrouped(number.substring(0, end), gap);
        return sound ? number.replace(String.valueOf(gap), "") : "";
    }

    private static int wholeEnd(final String number) {
        for (int i = 0; i < number.length(); i++) {
            if (number.charAt(i) == '.' || number.charAt(i) == ',') {
                return i;
            }
        }
        return number.length();
    }

    /** One to three digits, not starting with 0, then groups of exactly three. */
    private static boolean isGrouped(final String whole, final char gap) {
        final String[] groups = whole.split(String.valueOf(gap), -1);
        if (groups[0].isEmpty() || groups[0].length() > GROUP || groups[0].charAt(0) == '0') {
            return false;
        }
        for (int i = 1; i < groups.length; i++) {
            if (groups[i].length() != GROUP || !isDigits(groups[i])) {
                return false;
            }
        }
        return isDigits(groups[0]);
    }

    private static boolean isDigits(final String text) {
        return text.chars().allMatch(c -> c >= '0' && c <= '9');
    }

    private static boolean onlyZeros(final String text) {
        return text.chars().allMatch(c -> c == '0');
    }
}
