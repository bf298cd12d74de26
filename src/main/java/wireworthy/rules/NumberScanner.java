package wireworthy.rules;

import java.math.BigDecimal;
import java.util.List;

/** Reads the number at a place in a text: decimal, grouped, a fraction, with a power of ten. */
final class NumberScanner {

    /** What was found and where it ends; two meanings where a comma leaves two. */
    record Found(List<Numeral> meanings, int end) {}

    /** Powers of ten outside this range are slips of the keyboard. */
    private static final int LARGEST_POWER = 30;

    private static final int LONGEST_PART = 3;

    /** Of a rule or a recipe; "12/24" is two voltages, not a half. */
    private static final List<Integer> DENOMINATORS = List.of(2, 3, 4, 5, 6, 8, 10, 16, 32, 64);

    private static final String VULGAR = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";
    private static final int[] ABOVE = {1, 1, 2, 1, 3, 1, 2, 3, 4, 1, 5, 1, 3, 5, 7};
    private static final int[] BELOW = {2, 3, 3, 4, 4, 5, 5, 5, 5, 6, 6, 8, 8, 8, 8};

    private static final String SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    private final String text;
    private int at;

    private NumberScanner(final String text, final int from) {
        this.text = text;
        this.at = from;
    }

    /** The number that starts at {@code from}. */
    static Found scan(final String text, final int from) throws UnreadableFigure {
        return new NumberScanner(text, from).scan();
    }

    /** Whether a number could start with the character. */
    static boolean startsNumber(final char c) {
        return isDigit(c) || VULGAR.indexOf(c) >= 0;
    }

    private Found scan() throws UnreadableFigure {
        final boolean negative = peek(0) == '-';
        if (negative || peek(0) == '+') {
            at++;
        }
        final List<Numeral> unsigned = unsigned();
        return new Found(
                negative ? unsigned.stream().map(Numeral::negated).toList() : unsigned, at);
    }

    private List<Numeral> unsigned() throws UnreadableFigure {
        final int start = at;
        skipNumber();
        final String number = text.substring(start, at);
        if (number.length() <= LONGEST_PART && isInteger(number)) {
            final int whole = number.isEmpty() ? 0 : Integer.parseInt(number);
            if (vulgarFollows(whole) || slashFollows() || mixedFollows()) {
                return List.of(fraction(number, whole));
            }
        }
        if (number.isEmpty() || number.equals(".") || number.equals(",")) {
            throw new UnreadableFigure("is not a number");
        }
        return decimals(number);
    }

    private List<Numeral> decimals(final String number) throws UnreadableFigure {
        final List<BigDecimal> meanings = Separators.meanings(number);
        if (meanings.isEmpty()) {
            throw new UnreadableFigure("has points or commas that do not make one number");
        }
        final int power = powerOfTen();
        for (final BigDecimal meaning : meanings) {
            checkSize(meaning.scaleByPowerOfTen(power));
        }
        return meanings.stream().map(m -> Numeral.decimal(m.scaleByPowerOfTen(power))).toList();
    }

    private static void checkSize(final BigDecimal value) throws UnreadableFigure {
        if (Math.abs(value.precision() - (long) value.scale()) > LARGEST_POWER) {
            throw new UnreadableFigure("is too large or too small to be meant");
        }
    }

    private void skipNumber() {
        while (isDigit(peek(0)) || markInside() || gapInside()) {
            at++;
        }
        if (peek(0) == '.' && at > 0 && isDigit(text.charAt(at - 1))) {
            at++;
        }
    }

    private boolean markInside() {
        return (peek(0) == '.' || peek(0) == ',') && isDigit(peek(1));
    }

    /** A space or apostrophe between a digit and a group of exactly three. */
    private boolean gapInside() {
        return (peek(0) == ' ' || peek(0) == '\'')
                && at > 0
                && isDigit(text.charAt(at - 1))
                && isDigit(peek(1))
                && isDigit(peek(2))
                && isDigit(peek(3))
                && !isDigit(peek(4));
    }

    private boolean vulgarFollows(final int whole) {
        return VULGAR.indexOf(peek(0)) >= 0
                || whole > 0 && peek(0) == ' ' && VULGAR.indexOf(peek(1)) >= 0;
    }

    private boolean slashFollows() {
        return peek(0) == '/' && isDigit(peek(1));
    }

    private boolean mixedFollows() {
        int i = 1;
        while (isDigit(peek(i))) {
            i++;
        }
        return peek(0) == ' ' && i > 1 && peek(i) == '/' && isDigit(peek(i + 1));
    }

    private Numeral fraction(final String number, final int whole) throws UnreadableFigure {
        if (peek(0) == '/') {
            if (number.isEmpty()) {
                throw new UnreadableFigure("is not a number");
            }
            at++;
            return Numeral.fraction(0, whole, denominator());
        }
        at += peek(0) == ' ' ? 1 : 0;
        final int vulgar = VULGAR.indexOf(peek(0));
        if (vulgar >= 0) {
            at++;
            return Numeral.fraction(whole, ABOVE[vulgar], BELOW[vulgar]);
        }
        return mixed(whole);
    }

    private Numeral mixed(final int whole) throws UnreadableFigure {
        final int above = part();
        at++;
        final int below = denominator();
        if (above == 0 || above >= below) {
            throw new UnreadableFigure("has a fraction that is not smaller than one");
        }
        return Numeral.fraction(whole, above, below);
    }

    private int denominator() throws UnreadableFigure {
        final int below = part();
        if (!DENOMINATORS.contains(below)) {
            throw new UnreadableFigure("is not a fraction that is in use");
        }
        return below;
    }

    private int part() throws UnreadableFigure {
        final int start = at;
        while (isDigit(peek(0))) {
            at++;
        }
        if (at == start || at - start > LONGEST_PART) {
            throw new UnreadableFigure("is not a fraction that is in use");
        }
        return Integer.parseInt(text.substring(start, at));
    }

    private int powerOfTen() throws UnreadableFigure {
        final int start = at;
        if (peek(0) == 'e' || peek(0) == 'E') {
            at++;
        } else if (!timesTen()) {
            at = start;
            return 0;
        }
        final int sign = powerSign();
        final int digits = powerDigits();
        if (digits < 0) {
            at = start;
            return 0;
        }
        return sign * digits;
    }

    /** Past "x 10^" or "·10" before a raised power. */
    private boolean timesTen() {
        skipSpace();
        if ("x*·".indexOf(peek(0)) < 0) {
            return false;
        }
        at++;
        skipSpace();
        if (peek(0) != '1' || peek(1) != '0') {
            return false;
        }
        at += 2;
        final boolean caret = peek(0) == '^';
        at += caret ? 1 : 0;
        return caret || peek(0) == '⁻' || SUPERSCRIPTS.indexOf(peek(0)) >= 0;
    }

    private int powerSign() {
        final char sign = peek(0);
        if (sign == '-' || sign == '⁻' || sign == '+') {
            at++;
        }
        return sign == '-' || sign == '⁻' ? -1 : 1;
    }

    private int powerDigits() throws UnreadableFigure {
        int power = -1;
        while (digitOrRaised(peek(0)) >= 0) {
            power = Math.max(power, 0) * 10 + digitOrRaised(peek(0));
            at++;
            if (power > 10 * LARGEST_POWER) {
                throw new UnreadableFigure("is too large or too small to be meant");
            }
        }
        return power;
    }

    private static int digitOrRaised(final char c) {
        return isDigit(c) ? c - '0' : SUPERSCRIPTS.indexOf(c);
    }

    private void skipSpace() {
        while (peek(0) == ' ') {
            at++;
        }
    }

    private char peek(final int ahead) {
        return at + ahead < text.length() ? text.charAt(at + ahead) : '\0';
    }

    private static boolean isInteger(final String text) {
        return text.chars().allMatch(c -> isDigit((char) c));
    }

    private static boolean isDigit(final char c) {
        return c >= '0' && c <= '9';
    }
}
