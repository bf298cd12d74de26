package wireworthy.rules;

import java.math.BigDecimal;
import wireworthy.texts.Phrases;

/**
 * A unit that may stand behind a number.
 *
 * @param word canonical, in plain letters: "mA", "mm2"
 * @param shown for people: "mA", "mm²"
 * @param name as said in a sentence: "milliamps"
 * @param factor SI value of one
 * @param zero SI value of none; other than 0 only for temperatures
 */
record Unit(String word, String shown, String name, BigDecimal factor, BigDecimal zero) {
    private static final Phrases NAMES = new Phrases("units");

    static Unit of(
            final String word, final String shown, final String name, final BigDecimal factor) {
        return new Unit(word, shown, name, factor, BigDecimal.ZERO);
    }

    /** Spelt out: at start, units are compared before a record's own comparison could be made. */
    @Override
    public boolean equals(final Object other) {
        return other instanceof Unit unit
                && unit.word.equals(word)
                && unit.shown.equals(shown)
                && unit.name.equals(name)
                && unit.factor.equals(factor)
                && unit.zero.equals(zero);
    }

    @Override
    public int hashCode() {
        return word.hashCode();
    }

    /** The name in the language in use. */
    String words() {
        return NAMES.of(name);
    }

    BigDecimal si(final BigDecimal value) {
        return value.multiply(factor).add(zero);
    }
}
