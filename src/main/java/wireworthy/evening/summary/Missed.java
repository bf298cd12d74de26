package wireworthy.evening.summary;

import java.util.Comparator;
import java.util.List;

/**
 * How a problem or a skill went.
 *
 * @param label what it is
 * @param right answers that were
 * @param wrong answers that were not
 * @param open not answered, or not readable
 */
public record Missed(String label, int right, int wrong, int open) {
    /** What was answered wrong says more than what nobody came to. */
    static final Comparator<Missed> MOST_MISSED_FIRST =
            Comparator.comparingDouble((Missed each) -> -each.wrongShare())
                    .thenComparingDouble(each -> -each.share());

    static Missed none(final String label) {
        return new Missed(label, 0, 0, 0);
    }

    Missed with(final Verdict verdict) {
        if (verdict.right().isEmpty()) {
            return new Missed(label, right, wrong, open + 1);
        }
        return verdict.right().get()
                ? new Missed(label, right + 1, wrong, open)
                : new Missed(label, right, wrong + 1, open);
    }

    /** All of them together, under a label of its own. */
    public static Missed sum(final String label, final List<Missed> all) {
        return new Missed(
                label,
                all.stream().mapToInt(Missed::right).sum(),
                all.stream().mapToInt(Missed::wrong).sum(),
                all.stream().mapToInt(Missed::open).sum());
    }

    /** The share that was wrong. */
    double wrongShare() {
        return part(wrong);
    }

    /** The share that was not right. */
    double share() {
        return part(wrong + open);
    }

    private double part(final int answers) {
        return (double) answers / Math.max(1, right + wrong + open);
    }
}
