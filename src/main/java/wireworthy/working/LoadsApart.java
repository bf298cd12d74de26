package wireworthy.working;

import static wireworthy.rules.Quantity.*;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import wireworthy.rules.Ref;

/** Over how many circuits loads are spread; one load is never split. */
public final class LoadsApart {
    private static final double EVEN = 1e-9;
    private static final int MOST = 1000;

    /**
     * Loads of one kind.
     *
     * @param each A of one
     */
    private record Alike(double each, long count) {}

    private final double most;
    private final List<Double> left = new ArrayList<>();

    private LoadsApart(final double most) {
        this.most = most;
    }

    /**
     * How many circuits, each filled with the largest loads that still go in.
     *
     * @param most A on each of them
     * @return empty where a single load takes more, or it can't be told
     */
    public static OptionalInt circuits(final Worked worked, final double most) {
        final List<Alike> loads = loads(worked);
        final double all = worked.value(CIRCUIT_CURRENT).orElse(Double.NaN);
        if (loads.isEmpty()) {
            return some(Math.ceil(all / most * (1 - EVEN)));
        }
        final double largest = loads.stream().mapToDouble(Alike::each).max().orElseThrow();
        return largest <= most * (1 + EVEN) && all <= MOST * most
                ? some(new LoadsApart(most).filled(loads))
                : OptionalInt.empty();
    }

    private static OptionalInt some(final double circuits) {
        return circuits <= MOST ? OptionalInt.of((int) circuits) : OptionalInt.empty();
    }

    private static List<Alike> loads(final Worked worked) {
        return IntStream.rangeClosed(1, worked.question().loads().size())
                .mapToObj(load -> alike(worked, load))
                .filter(each -> each.each() > 0)
                .sorted(Comparator.comparing(Alike::each, Collections.reverseOrder()))
                .toList();
    }

    private static Alike alike(final Worked worked, final int load) {
        final OptionalDouble supply = worked.value(new Ref(SUPPLY_CURRENT, load));
        final OptionalDouble own = worked.value(new Ref(LOAD_CURRENT, load));
        return new Alike(
                supply.isPresent() ? supply.getAsDouble() : own.orElse(0),
                Math.round(worked.value(new Ref(LOAD_COUNT, load)).orElse(1)));
    }

    private int filled(final List<Alike> loads) {
        loads.forEach(this::fill);
        return left.size();
    }

    private void fill(final Alike loads) {
        long still = loads.count();
        for (int i = 0; still > 0; i++) {
            if (i == left.size()) {
                left.add(most);
            }
            final long here = Math.min(still, going(left.get(i), loads.each()));
            left.set(i, left.get(i) - here * loads.each());
            still -= here;
        }
    }

    private static long going(final double left, final double each) {
        return (long) (left / each * (1 + EVEN));
    }
}
