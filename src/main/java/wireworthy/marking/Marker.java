package wireworthy.marking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wireworthy.rules.Dimension;
import wireworthy.rules.Figures;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.rules.SlipCatalogue;
import wireworthy.working.Plan;
import wireworthy.working.Worked;

/** Marks answers and says which slips explain them. */
public final class Marker {
    private static final double WINDOW = 0.001;
    private static final double EARLY_ROUNDING = 0.03;

    private final Worked worked;
    private final Explaining explaining;
    private final double[] pinned;

    private Marker(final Worked worked) {
        this.worked = worked;
        this.explaining = new Explaining(worked);
        this.pinned = SlipFigures.nothingPinned(worked.plan());
    }

    /** Marks the answers of a question that stand on the way, in the order of the working. */
    public static List<Mark> marks(final Worked worked) {
        final Map<Ref, String> typed = new LinkedHashMap<>();
        worked.question()
                .answers()
                .forEach(
                        (quantity, text) ->
                                onTheWay(worked, quantity).ifPresent(ref -> typed.put(ref, text)));
        return marks(worked, typed);
    }

    /** Marks one answer on its own. */
    public static Mark mark(final Worked worked, final Ref ref, final String typed) {
        return marks(worked, Map.of(ref, typed)).get(0);
    }

    /** Marks several answers, each judged also from the learner's own earlier ones. */
    public static List<Mark> marks(final Worked worked, final Map<Ref, String> typed) {
        if (typed.isEmpty()) {
            return List.of();
        }
        final Marker marker = new Marker(worked);
        return typed.entrySet().stream()
                .sorted(Comparator.comparingInt(e -> place(worked.plan(), e.getKey())))
                .map(e -> marker.next(e.getKey(), e.getValue()))
                .toList();
    }

    /** What an answered quantity stands for, if a line of the working gives it. */
    public static Optional<Ref> onTheWay(final Worked worked, final Quantity quantity) {
        final List<Ref> refs =
                worked.refs(quantity).stream()
                        .filter(ref -> !worked.question().figures().containsKey(ref))
                        .filter(ref -> !worked.plan().assumed().contains(ref))
                        .toList();
        return refs.size() == 1 ? Optional.of(refs.get(0)) : Optional.empty();
    }

    private static int place(final Plan plan, final Ref ref) {
        return plan.placeOf(ref).orElseThrow();
    }

    private Mark next(final Ref ref, final String typed) {
        final Reading reading = Figures.read(typed, ref.quantity().dimension(), false);
        if (reading instanceof Reading.Read read && read.value() < 0 && positive(ref)) {
            return notRead(ref, typed, reading, explaining.negative(ref, read));
        }
        if (reading instanceof Reading.Read read) {
            final Mark mark = read(ref, typed, read);
            pinned[place(worked.plan(), ref)] = read.value();
            return mark;
        }
        final String words =
                reading instanceof Reading.Unclear unclear
                        ? unclear.question()
                        : ((Reading.Unreadable) reading).message();
        return notRead(ref, typed, reading, words);
    }

    private static boolean positive(final Ref ref) {
        final Dimension dimension = ref.quantity().dimension();
        return dimension != Dimension.TEMPERATURE && dimension != Dimension.GAUGE;
    }

    private static Mark notRead(
            final Ref ref, final String typed, final Reading reading, final String words) {
        return new Mark(
                ref,
                typed,
                reading,
                Optional.empty(),
                false,
                List.of(),
                Optional.empty(),
                Optional.empty(),
                words);
    }

    private Mark read(final Ref ref, final String typed, final Reading.Read read) {
        final double right = worked.values()[place(worked.plan(), ref)];
        final SlipFigures figures = SlipFigures.carriedOn(worked, ref, pinned.clone());
        if (Soundness.holds(worked.plan(), worked.values(), ref, read)) {
            return sound(ref, typed, read, explaining.sound(ref, read, right));
        }
        if (Soundness.holds(worked.plan(), figures.run(List.of()), ref, read)) {
            return followed(ref, typed, read, right);
        }
        return unsound(ref, typed, read, right, figures);
    }

    private Mark sound(
            final Ref ref, final String typed, final Reading.Read read, final String words) {
        return new Mark(
                ref,
                typed,
                read,
                Optional.of(true),
                true,
                List.of(),
                Optional.empty(),
                Optional.empty(),
                words);
    }

    private Mark followed(
            final Ref ref, final String typed, final Reading.Read read, final double right) {
        final Optional<Dangers> danger = danger(ref, read, right);
        return new Mark(
                ref,
                typed,
                read,
                Optional.of(false),
                true,
                List.of(),
                Optional.empty(),
                danger.map(Dangers::danger),
                explaining.followed(ref, read, right));
    }

    private Mark unsound(
            final Ref ref,
            final String typed,
            final Reading.Read read,
            final double right,
            final SlipFigures figures) {
        final List<Outcome> singles = singles(ref, read, right, figures);
        if (singles.isEmpty() && roundedEarly(ref, read, right, figures)) {
            return sound(ref, typed, read, explaining.roundedEarly(ref, read, right));
        }
        final Optional<Dangers> danger = danger(ref, read, right);
        final Optional<Ref> ask = singles.isEmpty() ? ask(read, figures) : Optional.empty();
        return new Mark(
                ref,
                typed,
                read,
                Optional.of(false),
                false,
                singles,
                ask,
                danger.map(Dangers::danger),
                explaining.unsound(ref, read, right, singles, danger, ask));
    }

    /** Slips after the learner's own earlier figures; failing that, after sound ones. */
    private List<Outcome> singles(
            final Ref ref, final Reading.Read read, final double right, final SlipFigures figures) {
        final List<Outcome> carried = explained(ref, read, right, figures.singles());
        return carried.isEmpty()
                ? explained(ref, read, right, SlipFigures.of(worked, ref))
                : carried;
    }

    private List<Outcome> explained(
            final Ref ref,
            final Reading.Read read,
            final double right,
            final List<Outcome> outcomes) {
        final List<Outcome> fitting = new ArrayList<>();
        for (final Outcome outcome : outcomes) {
            final boolean sameAsRight =
                    Math.abs(outcome.value() - right) <= WINDOW * Math.abs(right);
            final boolean known = fitting.stream().anyMatch(f -> f.ids().equals(outcome.ids()));
            if (!sameAsRight && !known && fits(read, outcome.value(), ref)) {
                fitting.add(outcome);
            }
        }
        return fitting;
    }

    /** Within half a unit of the last typed digit plus 0.1 %. */
    private static boolean fits(final Reading.Read read, final double value, final Ref ref) {
        final double unit = ref.quantity().dimension() == Dimension.GAUGE ? 0 : read.lastDigit();
        return Math.abs(read.value() - value) <= unit / 2 + WINDOW * Math.abs(value);
    }

    private boolean roundedEarly(
            final Ref ref, final Reading.Read read, final double right, final SlipFigures figures) {
        if (ref.quantity().chosen()
                || !(Math.abs(read.value() - right) <= EARLY_ROUNDING * Math.abs(right))) {
            return false;
        }
        final double window = read.lastDigit() / 2 + WINDOW * Math.abs(read.value());
        return figures.roundedTooEarly(read.value() - window, read.value() + window);
    }

    private Optional<Dangers> danger(final Ref ref, final Reading.Read read, final double right) {
        final double ceiling = worked.value(Quantity.FUSE_CEILING).orElse(Double.NaN);
        return Dangers.of(ref.quantity(), read.value(), right, ceiling);
    }

    /** The line whose answer would tell apart the pairs of slips that give this figure. */
    private Optional<Ref> ask(final Reading.Read read, final SlipFigures figures) {
        final List<Integer> lines = figures.linesBetween();
        final List<Outcome> pairs =
                figures.pairs().stream()
                        .filter(
                                pair ->
                                        Math.abs(read.value() - pair.value())
                                                <= read.lastDigit() / 2
                                                        + WINDOW * Math.abs(pair.value()))
                        .toList();
        if (pairs.isEmpty() || lines.isEmpty()) {
            return Optional.empty();
        }
        final List<double[]> runs =
                pairs.stream().map(pair -> figures.run(pair.changes())).toList();
        return lines.stream()
                .max(Comparator.comparingLong(place -> different(runs, place)))
                .map(place -> worked.plan().at(place));
    }

    private static long different(final List<double[]> runs, final int place) {
        return runs.stream().map(values -> (float) values[place]).distinct().count();
    }

    /** The slips of a mark by id, alternatives in order. */
    public static List<List<String>> ids(final Mark mark) {
        return mark.explained().stream()
                .map(Outcome::ids)
                .sorted(
                        Comparator.comparingInt(
                                ids -> ids.size() == 1 ? 0 : SlipCatalogue.order(ids.get(0))))
                .collect(Collectors.toList());
    }
}
