package wireworthy.rules;

/**
 * Why a line can't be worked with these numbers.
 *
 * @param where the path of the given to change, such as {@code given.ambient-temperature}
 * @param message what is wrong and what to do
 */
public record Refusal(String where, String message) {
    /** Why, from the values of the line. */
    @FunctionalInterface
    public interface Why {
        Refusal of(double[] x, Setting setting);
    }
}
