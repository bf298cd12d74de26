package wireworthy.rules;

import static wireworthy.rules.Quantity.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wireworthy.rules.Direction.Reading;
import wireworthy.rules.Slip.Kind;

/** The lines that join a list of loads: written out for as many loads as the list has. */
public final class ListRules {
    private static final double SECONDS_A_DAY = 86_400;

    private final List<Set<Quantity>> loads;

    private ListRules(final List<Set<Quantity>> loads) {
        this.loads = loads;
    }

    /**
     * The joining lines.
     *
     * @param loads for each load of the list, the quantities given for it
     */
    public static List<Direction> joining(final List<Set<Quantity>> loads) {
        final ListRules rules = new ListRules(loads);
        return Stream.of(
                        Optional.of(rules.circuitCurrent()),
                        Optional.of(rules.dailyEnergy()),
                        rules.startCurrent(),
                        Optional.of(rules.sideBySide()),
                        Optional.of(rules.inAString()),
                        Optional.of(rules.mainFuse()))
                .flatMap(Optional::stream)
                .toList();
    }

    private Direction circuitCurrent() {
        final Terms all = terms(this::current);
        return line(
                "loads-add",
                Skill.ADDING_LOADS,
                CIRCUIT_CURRENT,
                all.text(" + "),
                (x, s) -> all.sum(x, 0),
                currentSlips(all));
    }

    private List<Slip> currentSlips(final Terms all) {
        final List<Slip> slips = new ArrayList<>();
        final Terms timed = terms(this::currentByTime);
        if (any(load -> given(load, SHARE_OF_TIME))) {
            slips.add(slip("duty-on-cable", timed.text(" + "), (x, s) -> timed.sum(x, 0)));
        }
        final Terms single = terms(load -> List.of(oneCurrent(load)));
        slips.add(slip("count-left-out", single.text(" + "), (x, s) -> single.sum(x, 0)));
        if (loads.size() > 1) {
            slips.add(
                    slip(
                            "loads-averaged",
                            "(" + all.text(" + ") + ") ÷ " + all.size(),
                            (x, s) -> all.sum(x, 0) / all.size()));
            slips.add(
                    slip(
                            "largest-only",
                            "the largest of " + all.text(", "),
                            (x, s) -> all.largest(x)));
            slips.add(slip("series-thinking", text(oneCurrent(1)), (x, s) -> x[0]));
        }
        return slips;
    }

    private Direction dailyEnergy() {
        final Terms timed = terms(this::currentByTime);
        return line(
                "daily-energy",
                Skill.ENERGY_AND_RUNTIME,
                DAILY_ENERGY,
                "24 × {supply-voltage} × (" + timed.text(" + ") + ")",
                (x, s) -> SECONDS_A_DAY * x[0] * timed.sum(x, 1),
                List.of(
                        slip(
                                "divided-for-product",
                                "24 × (" + timed.text(" + ") + ") ÷ {supply-voltage}",
                                (x, s) -> SECONDS_A_DAY * timed.sum(x, 0) / x[x.length - 1])));
    }

    private Optional<Direction> startCurrent() {
        final List<Integer> motors =
                numbers().filter(load -> given(load, START_MULTIPLE)).boxed().toList();
        if (motors.isEmpty()) {
            return Optional.empty();
        }
        final String rises =
                motors.stream()
                        .map(
                                load ->
                                        "({start-multiple@"
                                                + load
                                                + "} − 1) × "
                                                + text(oneCurrent(load)))
                        .collect(Collectors.joining(", "));
        final String rise = motors.size() == 1 ? rises : "the largest of " + rises;
        return Optional.of(
                line(
                        "starting",
                        Skill.ADDING_LOADS,
                        START_CURRENT,
                        "{circuit-current} + " + rise,
                        (x, s) -> x[0] + largestRise(x),
                        List.of()));
    }

    private static double largestRise(final double[] x) {
        double most = 0;
        for (int i = 1; i + 1 < x.length; i += 2) {
            most = Math.max(most, (x[i] - 1) * x[i + 1]);
        }
        return most;
    }

    private Direction sideBySide() {
        final String text =
                numbers()
                        .mapToObj(load -> count(load, "1") + " ÷ " + text(at(RESISTANCE, load)))
                        .collect(Collectors.joining(" + "));
        final Terms string = terms(this::ohms);
        return line(
                "resistances-side-by-side",
                Skill.ADDING_LOADS,
                PARALLEL_RESISTANCE,
                "1 ÷ (" + text + ")",
                (x, s) -> 1 / conductance(x),
                List.of(
                        slip(
                                "parallel-adds-resistance",
                                string.text(" + "),
                                (x, s) -> string.sum(x, 0))));
    }

    private double conductance(final double[] x) {
        double sum = 0;
        int next = 0;
        for (int load = 1; load <= loads.size(); load++) {
            final double count = given(load, LOAD_COUNT) ? x[next++] : 1;
            sum += count / x[next++];
        }
        return sum;
    }

    private Direction inAString() {
        final Terms string = terms(this::ohms);
        return line(
                "resistances-in-a-string",
                Skill.ADDING_LOADS,
                SERIES_RESISTANCE,
                string.text(" + "),
                (x, s) -> string.sum(x, 0),
                List.of());
    }

    /** As the single circuit's main fuse; the list adds the slip of summing fuses. */
    private Direction mainFuse() {
        final Terms all = terms(this::current);
        final Slip summed =
                slip(
                        "branch-fuses-summed",
                        "the sum of a fuse for each of " + all.text(", ") + ", times {margin} each",
                        (x, s) -> branchFuses(all, x));
        return line(
                "main-fuse",
                Skill.FUSE_CHOICE,
                MAIN_FUSE,
                "next standard rating at or above {fuse-floor}",
                (x, s) -> Setting.mainRatingFor(x[0]).orElse(Double.NaN),
                List.of(summed));
    }

    private double branchFuses(final Terms all, final double[] x) {
        final double margin = x[x.length - 1];
        double sum = 0;
        int next = 0;
        for (final List<Ref> factors : all.products()) {
            double amps = margin;
            for (int i = 0; i < factors.size(); i++) {
                amps *= x[next++];
            }
            sum += Setting.mainRatingFor(amps).orElse(Double.NaN);
        }
        return sum;
    }

    private List<Ref> current(final int load) {
        return counted(load, oneCurrent(load));
    }

    private List<Ref> ohms(final int load) {
        return counted(load, at(RESISTANCE, load));
    }

    private List<Ref> counted(final int load, final Ref each) {
        return given(load, LOAD_COUNT) ? List.of(at(LOAD_COUNT, load), each) : List.of(each);
    }

    private List<Ref> currentByTime(final int load) {
        final List<Ref> factors = new ArrayList<>(current(load));
        if (given(load, SHARE_OF_TIME)) {
            factors.add(at(SHARE_OF_TIME, load));
        }
        return factors;
    }

    private Ref oneCurrent(final int load) {
        return at(given(load, EFFICIENCY) ? SUPPLY_CURRENT : LOAD_CURRENT, load);
    }

    private String count(final int load, final String otherwise) {
        return given(load, LOAD_COUNT) ? text(at(LOAD_COUNT, load)) : otherwise;
    }

    private Terms terms(final IntFunction<List<Ref>> product) {
        return new Terms(numbers().mapToObj(product).toList());
    }

    private IntStream numbers() {
        return IntStream.rangeClosed(1, loads.size());
    }

    private boolean any(final IntPredicate test) {
        return numbers().anyMatch(test);
    }

    private boolean given(final int load, final Quantity quantity) {
        return loads.get(load - 1).contains(quantity);
    }

    private static Ref at(final Quantity quantity, final int load) {
        return new Ref(quantity, load);
    }

    private static String text(final Ref ref) {
        return "{" + ref.quantity().id() + "@" + ref.subject() + "}";
    }

    private static Slip slip(final String id, final String text, final Arithmetic arithmetic) {
        return new Slip(id, Kind.MISCALCULATES, Formula.of(text), arithmetic);
    }

    private static Direction line(
            final String rule,
            final Skill skill,
            final Quantity output,
            final String text,
            final Arithmetic arithmetic,
            final List<Slip> slips) {
        return new Direction(
                rule,
                skill,
                Ref.circuit(output),
                Formula.of(text),
                arithmetic,
                Reading.FORWARD,
                1,
                setting -> true,
                setting -> Optional.empty(),
                Optional.empty(),
                slips);
    }
}
