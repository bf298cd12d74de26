package wireworthy.marking;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import wireworthy.rules.Ref;
import wireworthy.working.Danger;

/**
 * What is found out about an unsound answer.
 *
 * @param explained what explains it, the likeliest first: single slips, or pairs that have evidence
 * @param suspected the pairs of slips that fit it, whether there is evidence or not
 * @param ask the quantity whose answer would settle which slips it was
 * @param open the line at which to open the working, where nothing explains the answer
 * @param danger what acting on it would lead to
 */
public record Diagnosis(
        List<Outcome> explained,
        List<Outcome> suspected,
        Optional<Ref> ask,
        Optional<Ref> open,
        Optional<Danger> danger) {
    /** Nothing to find out. */
    public static final Diagnosis NONE =
            new Diagnosis(
                    List.of(), List.of(), Optional.empty(), Optional.empty(), Optional.empty());

    public Diagnosis {
        explained = List.copyOf(explained);
        suspected = List.copyOf(suspected);
    }

    /** Slips that are said. */
    static Diagnosis said(final List<Outcome> explained, final Optional<Ref> ask) {
        return new Diagnosis(explained, List.of(), ask, Optional.empty(), Optional.empty());
    }

    Diagnosis suspecting(final List<Outcome> pairs) {
        return new Diagnosis(explained, pairs, ask, open, danger);
    }

    Diagnosis openedAt(final Ref line) {
        return new Diagnosis(explained, suspected, ask, Optional.of(line), danger);
    }

    Diagnosis leadingTo(final Optional<Danger> consequence) {
        return new Diagnosis(explained, suspected, ask, open, consequence);
    }

    /** Whether the figure itself is asked for once more, for a decimal point that moved. */
    boolean asksAgain(final Ref answered) {
        return ask.equals(Optional.of(answered));
    }

    /** Whether one explanation stands without a question first. */
    public boolean settled() {
        return !explained.isEmpty() && ask.isEmpty();
    }

    /**
     * What explains it, without a misreading that a later one names more closely: milliohms, not
     * thousandths.
     */
    List<Outcome> told() {
        return IntStream.range(0, explained.size())
                .filter(
                        i ->
                                explained.subList(i + 1, explained.size()).stream()
                                        .noneMatch(later -> sameReading(explained.get(i), later)))
                .mapToObj(explained::get)
                .toList();
    }

    private static boolean sameReading(final Outcome one, final Outcome other) {
        return one.changes().size() == 1
                && other.changes().size() == 1
                && one.changes().get(0) instanceof Change.Misread a
                && other.changes().get(0) instanceof Change.Misread b
                && a.place() == b.place()
                && a.value() == b.value();
    }
}
