package wireworthy.rules;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import wireworthy.texts.TextBundle;

/** Reads the number at a place in a text: decimal, grouped, a fraction, with a power of ten. */
final class NumberScanner {
    private static final TextBundle TEXTS = new TextBundle("typed");

    /** What was found and where it ends; two meanings where a comma leaves two. */
    record Found(List<Numeral> meanings, int end) {}

    private final Cursor cursor;

    private NumberScanner(final Cursor cursor) {
        this.cursor = cursor;
    }

    /** The number that starts at {@code from}. */
    static Found scan(final String text, final int from) throws UnreadableFigure {
        return new NumberScanner(new Cursor(text, from)).scan();
    }

    /** Whether a number without sign could start with the character. */
    static boolean startsNumber(final char c) {
        return Cursor.isDigit(c) || Fraction.VULGAR.indexOf(c) >= 0;
    }

    private Found scan() throws UnreadableFigure {
        final boolean negative = cursor.peek(0) == '-';
        cursor.skip(negative || cursor.peek(0) == '+' ? 1 : 0);
        final List<Numeral> unsigned = unsigned();
        final List<Numeral> meanings =
                negative ? unsigned.stream().map(Numeral::negated).toList() : unsigned;
        return new Found(meanings, cursor.at());
    }

    private List<Numeral> unsigned() throws UnreadableFigure {
        final int start = cursor.at();
        while (cursor.isDigit(0) || markInside() || gapInside()) {
            cursor.skip(1);
        }
        final String number = cursor.since(start);
        if (Fraction.follows(cursor, number)) {
            return List.of(Fraction.scan(cursor, number));
        }
        if (number.isEmpty()) {
            throw new UnreadableFigure(TEXTS.of("no-number"));
        }
        cursor.skip(cursor.peek(0) == '.' ? 1 : 0);
        return decimals(number);
    }

    private boolean markInside() {
        return cursor.isOneOf(".,", 0) && cursor.isDigit(1);
    }

    /** A space or apostrophe between a digit and a group of exactly three. */
    private boolean gapInside() {
        return cursor.isOneOf(" '", 0)
                && cursor.isDigit(-1)
                && cursor.isDigit(1)
                && cursor.isDigit(2)
                && cursor.isDigit(3)
                && !cursor.isDigit(4);
    }

    private List<Numeral> decimals(final String number) throws UnreadableFigure {
        final List<BigDecimal> meanings = Separators.meanings(number);
        if (meanings.isEmpty()) {
            throw new UnreadableFigure(TEXTS.of("no-one-number"));
        }
        final int power = PowerOfTen.scan(cursor);
        final List<Numeral> numerals = new ArrayList<>(meanings.size());
        for (final BigDecimal meaning : meanings) {
            numerals.add(inRange(meaning.scaleByPowerOfTen(power)));
        }
        return numerals;
    }

    private static Numeral inRange(final BigDecimal value) throws UnreadableFigure {
        if (Math.abs(value.precision() - value.scale()) > PowerOfTen.LARGEST) {
            throw PowerOfTen.outOfRange();
        }
        return Numeral.decimal(value);
    }
}
