package wireworthy.evening;

import java.math.BigInteger;

/** Small whole numbers packed into one, each with as many values as it may take. */
final class Packed {
    private static final int BITS_A_SIGN = 5;

    private BigInteger number = BigInteger.ZERO;
    private BigInteger place = BigInteger.ONE;

    /** Adds a number below a bound. */
    Packed put(final int value, final int bound) {
        number = number.add(place.multiply(BigInteger.valueOf(value)));
        place = place.multiply(BigInteger.valueOf(bound));
        return this;
    }

    /** The number from elements of five bits, the highest first. */
    static Packed of(final int[] elements) {
        final Packed packed = new Packed();
        for (int i = elements.length - 1; i >= 0; i--) {
            packed.put(elements[i], 1 << BITS_A_SIGN);
        }
        return packed;
    }

    /** Takes the number out again that was put in first. */
    int take(final int bound) {
        final BigInteger[] parts = number.divideAndRemainder(BigInteger.valueOf(bound));
        number = parts[0];
        return parts[1].intValue();
    }

    /** How many elements of five bits hold whatever these numbers might have been. */
    int elements() {
        return (place.subtract(BigInteger.ONE).bitLength() + BITS_A_SIGN - 1) / BITS_A_SIGN;
    }

    /** The number as so many elements of five bits, the highest first. */
    int[] elements(final int count) {
        final Packed rest = new Packed();
        rest.number = number;
        final int[] elements = new int[count];
        for (int i = count - 1; i >= 0; i--) {
            elements[i] = rest.take(1 << BITS_A_SIGN);
        }
        return elements;
    }
}
