package wireworthy.practice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** How well chances that were told before answers agree with the answers. */
final class Scores {
    private static final int BINS = 10;

    private final List<Told> all = new ArrayList<>();

    private record Told(double chance, boolean right) {}

    void add(final double chance, final boolean right) {
        all.add(new Told(chance, right));
    }

    /** How likely a right answer was told a higher chance than a wrong one; equals count half. */
    double auc() {
        all.sort(Comparator.comparingDouble(Told::chance));
        double ranks = 0;
        long rights = 0;
        for (int from = 0, to; from < all.size(); from = to) {
            to = from;
            while (to < all.size() && all.get(to).chance() == all.get(from).chance()) {
                to++;
            }
            final long here = all.subList(from, to).stream().filter(Told::right).count();
            ranks += here * (from + 1 + to) / 2.0;
            rights += here;
        }
        return (ranks - rights * (rights + 1) / 2.0) / ((double) rights * (all.size() - rights));
    }

    /** How far the chances told are off what came, in ten bins weighted by their answers. */
    double calibrationError() {
        final double[] off = new double[BINS];
        for (final Told each : all) {
            final int bin = Math.min(BINS - 1, (int) (each.chance() * BINS));
            off[bin] += each.chance() - (each.right() ? 1 : 0);
        }
        double sum = 0;
        for (final double each : off) {
            sum += Math.abs(each);
        }
        return sum / all.size();
    }
}
