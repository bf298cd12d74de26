package wireworthy.rules;

import java.util.List;
import java.util.stream.Collectors;

/** A sum of products, one product for each load of a list. */
record Terms(List<List<Ref>> products) {
    /** Its text as a formula template, the products joined by a sign. */
    String text(final String sign) {
        return products.stream().map(Terms::product).collect(Collectors.joining(sign));
    }

    private static String product(final List<Ref> factors) {
        return factors.stream()
                .map(ref -> "{" + ref.quantity().id() + "@" + ref.subject() + "}")
                .collect(Collectors.joining(" × "));
    }

    /** The sum, its values beginning at {@code from}. */
    double sum(final double[] x, final int from) {
        double sum = 0;
        int next = from;
        for (final List<Ref> factors : products) {
            double value = 1;
            for (int i = 0; i < factors.size(); i++) {
                value *= x[next++];
            }
            sum += value;
        }
        return sum;
    }

    /** The largest product. */
    double largest(final double[] x) {
        double most = 0;
        int next = 0;
        for (final List<Ref> factors : products) {
            double value = 1;
            for (int i = 0; i < factors.size(); i++) {
                value *= x[next++];
            }
            most = Math.max(most, value);
        }
        return most;
    }

    /** How many products. */
    int size() {
        return products.size();
    }
}
