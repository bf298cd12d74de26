package wireworthy.rules;

import java.util.List;
import wireworthy.texts.TextBundle;

/** Reads a fraction that goes on from a whole number: "1/2", "1 1/2", "½", "1½". */
final class Fraction {
    private static final TextBundle TEXTS = new TextBundle("typed");

    static final String VULGAR = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";
    private static final int[] ABOVE = {1, 1, 2, 1, 3, 1, 2, 3, 4, 1, 5, 1, 3, 5, 7};
    private static final int[] BELOW = {2, 3, 3, 4, 4, 5, 5, 5, 5, 6, 6, 8, 8, 8, 8};

    /** Of a rule or a recipe; "12/24" is two voltages, not a half. */
    private static final List<Integer> DENOMINATORS = List.of(2, 3, 4, 5, 6, 8, 10, 16, 32, 64);

    private static final int LONGEST_PART = 3;

    private Fraction() {}

    /** Whether the number before the cursor, as typed, is the start of a fraction. */
    static boolean follows(final Cursor cursor, final String number) {
        if (number.length() > LONGEST_PART || !number.chars().allMatch(Character::isDigit)) {
            return false;
        }
        return cursor.isOneOf(VULGAR, 0)
                || (!number.isEmpty() && (slashFollows(cursor) || partFollows(cursor)));
    }

    private static boolean slashFollows(final Cursor cursor) {
        return cursor.peek(0) == '/' && cursor.isDigit(1);
    }

    private static boolean partFollows(final Cursor cursor) {
        int i = 1;
        while (cursor.isDigit(i)) {
            i++;
        }
        return cursor.peek(0) == ' '
                && (cursor.isOneOf(VULGAR, 1)
                        || (i > 1 && cursor.peek(i) == '/' && cursor.isDigit(i + 1)));
    }

    /** The number with its fraction; the cursor ends behind it. */
    static Numeral scan(final Cursor cursor, final String number) throws UnreadableFigure {
        final int whole = number.isEmpty() ? 0 : Integer.parseInt(number);
        if (cursor.peek(0) == '/') {
            return over(cursor, 0, whole);
        }
        cursor.skipSpace();
        final int vulgar = VULGAR.indexOf(cursor.peek(0));
        if (vulgar >= 0) {
            cursor.skip(1);
            return Numeral.fraction(whole, ABOVE[vulgar], BELOW[vulgar]);
        }
        return over(cursor, whole, part(cursor));
    }

    private static Numeral over(final Cursor cursor, final int whole, final int above)
            throws UnreadableFigure {
        cursor.skip(1);
        final int below = part(cursor);
        if (!DENOMINATORS.contains(below)) {
            throw unusual();
        }
        if (above >= below) {
            throw new UnreadableFigure(TEXTS.of("fraction-too-large"));
        }
        return Numeral.fraction(whole, above, below);
    }

    private static int part(final Cursor cursor) throws UnreadableFigure {
        final int start = cursor.at();
        cursor.skipDigits();
        if (cursor.at() - start > LONGEST_PART) {
            throw unusual();
        }
        return Integer.parseInt(cursor.since(start));
    }

    private static UnreadableFigure unusual() {
        return new UnreadableFigure(TEXTS.of("no-fraction"));
    }
}
