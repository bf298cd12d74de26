package wireworthy.working;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;

/** A random question in the making, with what an apart calculation expects of it. */
final class Draw {
    private final Random random;
    private final Map<String, String> given = new LinkedHashMap<>();
    private final Map<String, Double> expected = new LinkedHashMap<>();

    Draw(final Random random) {
        this.random = random;
    }

    /** A number in four figures, spread evenly over the powers of ten. */
    double number(final double least, final double most) {
        final double value = least * Math.pow(most / least, random.nextDouble());
        return new BigDecimal(value).round(new MathContext(4)).doubleValue();
    }

    int whole(final int least, final int most) {
        return least + random.nextInt(most - least + 1);
    }

    <T> T one(final List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    double one(final double... of) {
        return of[random.nextInt(of.length)];
    }

    boolean maybe() {
        return random.nextBoolean();
    }

    /** Gives a drawn figure. */
    double given(final String id, final double least, final double most, final String unit) {
        final double value = number(least, most);
        gives(id, value, unit);
        return value;
    }

    /** Gives a figure. */
    void gives(final String id, final double value, final String unit) {
        says(id, text(value) + (unit.isEmpty() ? "" : " " + unit));
    }

    static String text(final double value) {
        return BigDecimal.valueOf(value).toPlainString();
    }

    /** Gives a name or a figure as typed. */
    void says(final String id, final String typed) {
        given.put(id, '"' + typed + '"');
    }

    /** Gives a list, already written. */
    void lists(final String id, final String json) {
        given.put(id, json);
    }

    /** Asks for a quantity and says what it comes to, in its field unit; NaN where nothing fits. */
    void expects(final String id, final double value) {
        expected.put(id, value);
    }

    Map<String, Double> expected() {
        return expected;
    }

    String question() {
        final String entries =
                given.entrySet().stream()
                        .map(entry -> '"' + entry.getKey() + "\": " + entry.getValue())
                        .collect(Collectors.joining(", "));
        final String find =
                expected.keySet().stream()
                        .map(id -> '"' + id + '"')
                        .collect(Collectors.joining(", "));
        return "{\"given\": {" + entries + "}, \"find\": [" + find + "]}";
    }
}
