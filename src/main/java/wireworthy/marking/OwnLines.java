package wireworthy.marking;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.working.Step;
import wireworthy.working.Worked;

/** The lines of a working that the learner has answered so far. */
final class OwnLines {
    private final Worked worked;
    private final Set<Ref> known;
    private final Map<Integer, Reading.Read> answered = new TreeMap<>();
    private final Map<Integer, Reading.Read> later = new TreeMap<>();

    OwnLines(final Worked worked) {
        this(worked, Set.of());
    }

    /**
     * @param known lines that are sound whatever stands there
     */
    OwnLines(final Worked worked, final Set<Ref> known) {
        this.worked = worked;
        this.known = known;
    }

    /** Takes note of a line that is judged further on. */
    void expect(final Ref ref, final Reading.Read read) {
        later.put(worked.plan().placeOf(ref).orElseThrow(), read);
    }

    /** Takes over a line that has been judged. */
    void add(final Ref ref, final Reading.Read read) {
        final int place = worked.plan().placeOf(ref).orElseThrow();
        later.remove(place);
        answered.put(place, read);
    }

    boolean none() {
        return answered.isEmpty();
    }

    /** The learner's values by place, NaN elsewhere. */
    double[] pinned() {
        final double[] values = SlipFigures.nothingPinned(worked.plan());
        answered.forEach((place, read) -> values[place] = read.value());
        return values;
    }

    /** Whether these values are what the learner has on every line answered. */
    boolean agreeWith(final double[] values) {
        return answered.entrySet().stream()
                .allMatch(e -> Fit.holdsOnTheWay(at(e.getKey()), e.getValue(), values[e.getKey()]));
    }

    /** Whether a line that would not be sound with these values is another one here. */
    boolean contradict(final double[] values) {
        return answered.entrySet().stream()
                .filter(e -> values[e.getKey()] != worked.values()[e.getKey()])
                .anyMatch(
                        e -> !Fit.holdsOnTheWay(at(e.getKey()), e.getValue(), values[e.getKey()]));
    }

    /** Whether a line further on holds what these values have there, and not what is sound. */
    boolean goOnFrom(final Ref ref, final double[] values) {
        return later.entrySet().stream()
                .filter(e -> !at(e.getKey()).equals(ref))
                .filter(e -> Fit.holdsOnTheWay(at(e.getKey()), e.getValue(), values[e.getKey()]))
                .anyMatch(e -> !sound(e.getKey(), e.getValue()));
    }

    /** Whether an unsound line of the learner's holds what the first slip of a pair gives there. */
    boolean confirm(final SlipFigures figures, final Outcome pair) {
        final double[] first = figures.run(pair.changes().subList(0, 1));
        return agreeWith(figures.run(pair.changes()))
                && answered.entrySet().stream()
                        .filter(e -> !soundAt(e.getKey()))
                        .anyMatch(
                                e ->
                                        Fit.holdsOnTheWay(
                                                at(e.getKey()), e.getValue(), first[e.getKey()]));
    }

    /** Whether any line answered so far is not sound. */
    boolean anyUnsound() {
        return answered.keySet().stream().anyMatch(place -> !soundAt(place));
    }

    private Ref at(final int place) {
        return worked.plan().at(place);
    }

    private boolean soundAt(final int place) {
        return Optional.ofNullable(answered.get(place))
                .filter(read -> sound(place, read))
                .isPresent();
    }

    private boolean sound(final int place, final Reading.Read read) {
        return known.contains(at(place))
                || Soundness.holds(worked.plan(), worked.values(), at(place), read);
    }

    /**
     * The last of the lines answered that is not sound and that leads to another; what it holds.
     */
    Optional<Map.Entry<Ref, Reading.Read>> lastUnsound(final Ref asked) {
        return answered.entrySet().stream()
                .filter(e -> !sound(e.getKey(), e.getValue()) && leadsTo(e.getKey(), asked))
                .reduce((before, after) -> after)
                .map(e -> Map.entry(at(e.getKey()), e.getValue()));
    }

    /** Whether a line, or a given, goes into another. */
    boolean leadsTo(final Ref line, final Ref asked) {
        return worked.plan().placeOf(line).filter(place -> leadsTo(place, asked)).isPresent();
    }

    private boolean leadsTo(final int place, final Ref asked) {
        return worked.wayTo(asked).stream()
                .anyMatch(step -> IntStream.of(step.inputs()).anyMatch(input -> input == place));
    }

    /** Whether a line only hands on one value, as the sum of one load does. */
    private boolean onlyOne(final Step step) {
        final double[] values = worked.values();
        return step.inputs().length == 1 && values[step.inputs()[0]] == values[step.output()];
    }

    /**
     * The first line on the way to a quantity that is told and not yet answered soundly; what a
     * sound line was worked from is done with.
     */
    Ref firstOpen(final Ref asked) {
        final Set<Integer> open = new HashSet<>();
        final List<Step> way = worked.wayTo(asked);
        open.add(worked.plan().placeOf(asked).orElseThrow());
        for (int i = way.size() - 1; i >= 0; i--) {
            final Step step = way.get(i);
            if (open.contains(step.output()) && !soundAt(step.output())) {
                IntStream.of(step.inputs()).forEach(open::add);
            }
        }
        return way.stream()
                .filter(step -> open.contains(step.output()) && SlipFigures.told(step))
                .filter(step -> !soundAt(step.output()) && !onlyOne(step))
                .map(Step::output)
                .map(this::at)
                .findFirst()
                .orElse(asked);
    }
}
