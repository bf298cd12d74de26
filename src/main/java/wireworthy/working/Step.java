package wireworthy.working;

import wireworthy.rules.Arithmetic;
import wireworthy.rules.Direction;

/**
 * One line of a plan: which places of the values it reads and which one it fills.
 *
 * @param direction the line
 * @param inputs places read, in the order of the formula
 * @param output place filled
 */
public record Step(Direction direction, int[] inputs, int output) {
    /** Of the place it fills: a plan fills each one once. */
    @Override
    public int hashCode() {
        return output;
    }

    double of(final double[] values, final wireworthy.rules.Setting setting) {
        return of(direction.arithmetic(), inputs, values, setting);
    }

    static double of(
            final Arithmetic arithmetic,
            final int[] inputs,
            final double[] values,
            final wireworthy.rules.Setting setting) {
        final double[] x = new double[inputs.length];
        for (int i = 0; i < inputs.length; i++) {
            x[i] = values[inputs[i]];
        }
        return arithmetic.of(x, setting);
    }
}
