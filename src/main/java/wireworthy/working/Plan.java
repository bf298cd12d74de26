package wireworthy.working;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wireworthy.rules.Assumptions;
import wireworthy.rules.Direction;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.rules.Setting;
import wireworthy.rules.Slip;

/**
 * The chain of lines for one shape of question, found once and run with numbers as often as wanted.
 * Values stand in an array, a place each: the givens, the assumptions, then the lines.
 */
public final class Plan {
    private final Setting setting;
    private final List<Ref> places;
    private final Map<Ref, Integer> placeOf;
    private final Map<Quantity, List<Ref>> refsOf;
    private final Step[] steps;
    private final List<Step> lines;
    private final List<Ref> assumed;
    private final double[] assumptions;
    private final List<SlipAt> slips;
    private volatile List<Assumed> assumedInWords = List.of();

    /**
     * @param givens what has a number, whether a line reads it or not
     * @param assumed what is taken because the question is silent
     * @param lines the lines in working order
     */
    Plan(
            final Setting setting,
            final List<Ref> givens,
            final List<Ref> assumed,
            final List<Direction> lines) {
        this.setting = setting;
        this.assumed = List.copyOf(assumed);
        this.places = new ArrayList<>(givens);
        this.places.addAll(assumed);
        lines.forEach(line -> this.places.add(line.output()));
        this.placeOf = new HashMap<>();
        for (int i = 0; i < places.size(); i++) {
            placeOf.putIfAbsent(places.get(i), i);
        }
        this.refsOf = refsByQuantity();
        this.steps = lines.stream().map(this::step).toArray(Step[]::new);
        this.lines = List.of(steps);
        this.assumptions =
                assumed.stream()
                        .mapToDouble(ref -> Assumptions.of(ref.quantity(), setting).orElseThrow())
                        .toArray();
        this.slips = allSlips();
    }

    private Map<Quantity, List<Ref>> refsByQuantity() {
        return placeOf.keySet().stream()
                .sorted(Comparator.comparingInt(Ref::subject))
                .collect(Collectors.groupingBy(Ref::quantity));
    }

    private Step step(final Direction line) {
        return new Step(
                line, places(line.formula().inputs()), placeOf.getOrDefault(line.output(), -1));
    }

    private int[] places(final List<Ref> refs) {
        return refs.stream().mapToInt(ref -> placeOf.getOrDefault(ref, -1)).toArray();
    }

    private List<SlipAt> allSlips() {
        final List<SlipAt> all = new ArrayList<>();
        for (int i = 0; i < steps.length; i++) {
            for (final Slip slip : steps[i].direction().slips()) {
                final int[] inputs = places(slip.formula().inputs());
                if (Arrays.stream(inputs).allMatch(before(steps[i].output()))) {
                    all.add(new SlipAt(i, slip, inputs));
                }
            }
        }
        return List.copyOf(all);
    }

    /** A slip may use only what is known when its line is worked. */
    private static java.util.function.IntPredicate before(final int output) {
        return place -> place >= 0 && place < output;
    }

    /** The slips that can be made, by line and then in catalogue order. */
    public List<SlipAt> slips() {
        return slips;
    }

    /** The named choices. */
    public Setting setting() {
        return setting;
    }

    /** The lines in working order. */
    public List<Step> steps() {
        return lines;
    }

    /** What is taken because the question is silent. */
    public List<Ref> assumed() {
        return assumed;
    }

    /** The same in words, put together at the first call. */
    List<Assumed> assumedInWords() {
        if (assumedInWords.isEmpty()) {
            assumedInWords = Assumed.by(this);
        }
        return assumedInWords;
    }

    /** The value taken for what is assumed, by its number in {@link #assumed}; SI. */
    double assumption(final int number) {
        return assumptions[number];
    }

    /** What stands at a place. */
    public Ref at(final int place) {
        return places.get(place);
    }

    /** The place of a value, if the plan has it. */
    public Optional<Integer> placeOf(final Ref ref) {
        return Optional.ofNullable(placeOf.get(ref));
    }

    /**
     * The value of a reference; NaN where the plan has none.
     *
     * @param values SI by place
     */
    double value(final Ref ref, final double[] values) {
        final Integer place = placeOf.get(ref);
        return place == null ? Double.NaN : values[place];
    }

    /** What a quantity stands for: the circuit's own, then those of the loads in their order. */
    public List<Ref> refsOf(final Quantity quantity) {
        return refsOf.getOrDefault(quantity, List.of());
    }

    /**
     * The values before any line is worked: givens in their order, assumptions, then NaN.
     *
     * @param givens SI, in the order of the givens
     */
    public double[] start(final double[] givens) {
        final double[] values = new double[places.size()];
        Arrays.fill(values, Double.NaN);
        System.arraycopy(givens, 0, values, 0, givens.length);
        System.arraycopy(assumptions, 0, values, givens.length, assumptions.length);
        return values;
    }

    /** Works every line in place; NaN where nothing fits. */
    public double[] run(final double[] values) {
        for (final Step step : steps) {
            values[step.output()] = step.of(values, setting);
        }
        return values;
    }

    /**
     * Works lines in place with some of them gone wrong and some taken over.
     *
     * @param lines the numbers of those to work; the values of the others stand
     * @param from the first of them to work
     * @param slipping where it goes wrong, at most once a line
     * @param pinned values taken over from the learner by place, NaN elsewhere
     */
    public double[] replay(
            final double[] values,
            final BitSet lines,
            final int from,
            final List<SlipAt> slipping,
            final double[] pinned) {
        for (int i = lines.nextSetBit(from); i >= 0; i = lines.nextSetBit(i + 1)) {
            final int output = steps[i].output();
            values[output] =
                    Double.isNaN(pinned[output]) ? worked(i, values, slipping) : pinned[output];
        }
        return values;
    }

    private double worked(final int line, final double[] values, final List<SlipAt> slipping) {
        for (final SlipAt slip : slipping) {
            if (slip.step() == line) {
                return Step.of(slip.slip().arithmetic(), slip.inputs(), values, setting);
            }
        }
        return steps[line].of(values, setting);
    }
}
