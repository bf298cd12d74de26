package wireworthy.rules;

import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** American wire gauge as typed and as shown; 1/0 to 4/0 count as 0 to -3. */
final class Gauge {

    static final int THICKEST = -3;
    static final int THINNEST = 40;

    private static final Pattern MARKED =
            Pattern.compile(
                    "(?i)(?:(?:awg|#|no\\.?) ?(?<before>[0-9]{1,2}|0{2,4}|[1-4]/0)"
                            + "|(?<after>[0-9]{1,2}|0{2,4}|[1-4]/0) ?-?(?:awg|ga\\.?|gauge))");
    private static final Pattern BARE = Pattern.compile("[0-9]{1,2}|0{2,4}|[1-4]/0");
    private static final Pattern AUGHT = Pattern.compile("0{2,4}|[1-4]/0");

    private Gauge() {}

    /** A gauge that says so: "12 AWG", "#12", "2/0", "000". */
    static OptionalInt marked(final String plain) {
        if (AUGHT.matcher(plain).matches()) {
            return OptionalInt.of(number(plain));
        }
        final Matcher marked = MARKED.matcher(plain);
        if (!marked.matches()) {
            return OptionalInt.empty();
        }
        final String before = marked.group("before");
        return inRange(number(before == null ? marked.group("after") : before));
    }

    /** A gauge where nothing else could stand: "12" too. */
    static OptionalInt any(final String plain) {
        return BARE.matcher(plain).matches() ? inRange(number(plain)) : marked(plain);
    }

    private static OptionalInt inRange(final int gauge) {
        return gauge <= THINNEST ? OptionalInt.of(gauge) : OptionalInt.empty();
    }

    private static int number(final String digits) {
        if (digits.endsWith("/0")) {
            return 1 - (digits.charAt(0) - '0');
        }
        return AUGHT.matcher(digits).matches() ? 1 - digits.length() : Integer.parseInt(digits);
    }

    /** "12" or "4/0". */
    static String text(final int gauge) {
        return gauge > 0 ? Integer.toString(gauge) : 1 - gauge + "/0";
    }

    /** Cross-section in square metres, ASTM B258: d = 0.127 mm x 92^((36 - n) / 39). */
    static double area(final int gauge) {
        final double diameter = 0.127e-3 * Math.pow(92, (36 - gauge) / 39.0);
        return Math.PI / 4 * diameter * diameter;
    }
}
