package wireworthy.facts;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * American wire gauge, ASTM B258: d = 0.127 mm x 92^((36 - n) / 39). The numbers 0, -1, -2 and -3
 * are written 1/0, 2/0, 3/0 and 4/0.
 */
public final class Awg {
    private static final List<Integer> NUMBERS = IntStream.rangeClosed(-3, 24).boxed().toList();
    private static final double DIAMETER_OF_36_MM = 0.127;
    private static final Pattern WRITTEN =
            Pattern.compile("(?:([1-4])/0|(0{1,4})|([1-9]\\d?))(?:\\s*AWG)?");

    private Awg() {}

    /** Area of solid round wire of this gauge, in mm2. */
    public static double areaMm2(final double n) {
        final double diameter = diameterMm(n);
        return Math.PI / 4 * diameter * diameter;
    }

    /** Diameter of solid round wire of this gauge, in mm. */
    public static double diameterMm(final double n) {
        return DIAMETER_OF_36_MM * Math.pow(92, (36 - n) / 39);
    }

    /** The gauge of solid round wire of this area, seldom a whole number; NaN unless above zero. */
    public static double exactNumber(final double mm2) {
        final double diameter = Math.sqrt(4 * mm2 / Math.PI);
        return mm2 > 0
                ? 36 - 39 * Math.log(diameter / DIAMETER_OF_36_MM) / Math.log(92)
                : Double.NaN;
    }

    /** The gauge as it is written: "12 AWG", "2/0 AWG"; one between two numbers as "12.3 AWG". */
    public static String label(final double n) {
        if (n != Math.rint(n)) {
            return String.format(Locale.ROOT, "%.1f AWG", n);
        }
        final int whole = (int) n;
        return (whole > 0 ? whole : (1 - whole) + "/0") + " AWG";
    }

    /** The number of a gauge written "12", "2/0", "00" or "12 AWG"; empty if it is none. */
    public static OptionalInt number(final String written) {
        final Matcher matcher = WRITTEN.matcher(written.strip());
        if (!matcher.matches()) {
            return OptionalInt.empty();
        }
        if (matcher.group(1) != null) {
            return OptionalInt.of(1 - Integer.parseInt(matcher.group(1)));
        }
        return OptionalInt.of(
                matcher.group(2) != null
                        ? 1 - matcher.group(2).length()
                        : Integer.parseInt(matcher.group(3)));
    }

    /** The gauges the tables know, thickest first: -3 (4/0) to 24. */
    public static List<Integer> numbers() {
        return NUMBERS;
    }

    /** Where the formula is published. */
    public static Source source() {
        return new Source("ASTM B258", Provenance.READ);
    }
}
