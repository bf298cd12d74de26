package wireworthy.evening;

/**
 * The 32 signs of a sheet mark: digits and capitals without I, L, O and U, which are taken for 1,
 * 1, 0 and V where they are typed. Each sign stands for an element of the field of 32 elements.
 *
 * <p>The last two signs are checks: a Reed-Solomon code (Reed and Solomon 1960) over that field,
 * extended to all 32 places, in which any two marks of one length differ in three signs at least.
 * So one or two wrong signs, and two signs swapped, never give another mark.
 */
final class Signs {
    /** The longest mark: there is a place for each element of the field. */
    static final int MOST = 32;

    static final int CHECKS = 2;

    private static final String SIGNS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    private static final String MISREAD = "ILOU";
    private static final String MEANT = "110V";

    /** x^5 + x^2 + 1, whose root runs through all elements but nought. */
    private static final int FIELD = 0b100101;

    private Signs() {}

    /** The elements with their two checks behind them. */
    static int[] checked(final int[] elements) {
        final int[] all = new int[elements.length + CHECKS];
        System.arraycopy(elements, 0, all, 0, elements.length);
        final int before = all.length - 2;
        final int last = all.length - 1;
        final int sum = sum(all);
        all[last] = divided(weighted(all) ^ times(before, sum), before ^ last);
        all[before] = sum ^ all[last];
        return all;
    }

    /** Whether the checks hold. */
    static boolean hold(final int[] all) {
        return sum(all) == 0 && weighted(all) == 0;
    }

    private static int sum(final int[] elements) {
        int sum = 0;
        for (final int element : elements) {
            sum ^= element;
        }
        return sum;
    }

    /** The sum of all elements, each times its place. */
    private static int weighted(final int[] elements) {
        int sum = 0;
        for (int place = 0; place < elements.length; place++) {
            sum ^= times(place, elements[place]);
        }
        return sum;
    }

    private static int times(final int a, final int b) {
        int product = 0;
        for (int bit = 4; bit >= 0; bit--) {
            product <<= 1;
            product ^= (product & 32) == 0 ? 0 : FIELD;
            product ^= (b >> bit & 1) == 0 ? 0 : a;
        }
        return product;
    }

    /** The element that gives a when multiplied by b, which is not nought. */
    private static int divided(final int a, final int b) {
        int quotient = 0;
        while (times(quotient, b) != a) {
            quotient++;
        }
        return quotient;
    }

    /** The sign of an element. */
    static char sign(final int element) {
        return SIGNS.charAt(element);
    }

    /** The element of a sign as typed; -1 where it is none. */
    static int element(final char typed) {
        final char capital = Character.toUpperCase(typed);
        final int misread = MISREAD.indexOf(capital);
        return SIGNS.indexOf(misread < 0 ? capital : MEANT.charAt(misread));
    }
}
