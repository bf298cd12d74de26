package wireworthy.rules;

/** The sum of one line: SI values in the order of the formula, in the setting of the question. */
@FunctionalInterface
public interface Arithmetic {
    /** SI result; NaN where nothing fits. */
    double of(double[] x, Setting setting);
}
