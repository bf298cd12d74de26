package wireworthy.rules;

import wireworthy.texts.TextBundle;

/** Reads the power of ten behind a number: "e-3", "E3", "x10^3", "·10⁻³". */
final class PowerOfTen {
    private static final TextBundle TEXTS = new TextBundle("typed");

    /** Beyond it a figure is a slip of the keyboard. */
    static final int LARGEST = 30;

    private static final String TIMES = "x*·";
    private static final String RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    private static final char RAISED_MINUS = '⁻';

    private PowerOfTen() {}

    /** The power, 0 where none follows; the cursor ends behind it. */
    static int scan(final Cursor cursor) throws UnreadableFigure {
        final int start = cursor.at();
        if (!skipMark(cursor)) {
            cursor.moveTo(start);
            return 0;
        }
        final boolean negative = cursor.peek(0) == '-' || cursor.peek(0) == RAISED_MINUS;
        cursor.skip(negative || cursor.peek(0) == '+' ? 1 : 0);
        if (digit(cursor) < 0) {
            cursor.moveTo(start);
            return 0;
        }
        return negative ? -digits(cursor) : digits(cursor);
    }

    private static boolean skipMark(final Cursor cursor) {
        if (cursor.isOneOf("eE", 0)) {
            cursor.skip(1);
            return true;
        }
        cursor.skipSpace();
        if (!cursor.isOneOf(TIMES, 0)) {
            return false;
        }
        cursor.skip(1);
        cursor.skipSpace();
        return skipTen(cursor);
    }

    private static boolean skipTen(final Cursor cursor) {
        if (cursor.peek(0) != '1' || cursor.peek(1) != '0') {
            return false;
        }
        cursor.skip(2);
        if (cursor.peek(0) == '^') {
            cursor.skip(1);
            return true;
        }
        return cursor.peek(0) == RAISED_MINUS || cursor.isOneOf(RAISED, 0);
    }

    private static int digits(final Cursor cursor) throws UnreadableFigure {
        int power = 0;
        while (digit(cursor) >= 0) {
            power = power * 10 + digit(cursor);
            cursor.skip(1);
            if (power > 10 * LARGEST) {
                throw outOfRange();
            }
        }
        return power;
    }

    private static int digit(final Cursor cursor) {
        return cursor.isDigit(0) ? cursor.peek(0) - '0' : RAISED.indexOf(cursor.peek(0));
    }

    static UnreadableFigure outOfRange() {
        return new UnreadableFigure(TEXTS.of("too-large-or-small"));
    }
}
