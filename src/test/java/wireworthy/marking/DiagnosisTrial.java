package wireworthy.marking;

import wireworthy.practice.Banks;
import wireworthy.practice.Template;
import wireworthy.rules.Figures;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.working.Danger;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.ResourceBundle;
import java.util.TreeMap;

/**
 * Simulated learners at every template of the built-in banks: what became of their answers. It says
 * how well figures tell slips apart, not how people learn.
 */
final class DiagnosisTrial {
    private static final ResourceBundle DANGERS =
            ResourceBundle.getBundle("wireworthy.texts.dangers");
    private static final int TYPED = 4;
    private static final int EACH = 3;
    private static final int NEXT = 1000;

    /** What is counted. */
    enum Count {
        SINGLE("one slip named first"),
        SINGLE_RIGHT("one slip marked right"),
        SINGLE_THREE("one slip in three figures, named first or asked first"),
        SINGLE_ASKED("one slip asked about first, settled by the line"),
        PAIR("two slips: said, or the line asked that settles it"),
        PAIR_TWICE("two slips over two problems"),
        PAIR_THREE("two slips in three figures, said or settled"),
        PAIR_OF_POINT("two slips, one a decimal point"),
        PAIR_OF_POINT_TWICE("the same over two problems"),
        CHANCE("no slip, wrongly explained"),
        CHANCE_FOUR("no slip in four figures, wrongly explained"),
        ROUNDED("three figures on the way, sound"),
        DANGER("could start a fire, and it is said first"),
        LONG("more than 45 words");

        private final String words;

        Count(final String words) {
            this.words = words;
        }
    }

    private final Map<Count, int[]> counts = new TreeMap<>();
    private final Map<Count, List<String>> notes = new TreeMap<>();
    private final Random random;

    private DiagnosisTrial(final long seed) {
        this.random = new Random(seed);
        for (final Count each : Count.values()) {
            counts.put(each, new int[2]);
            notes.put(each, new ArrayList<>());
        }
    }

    /** So many problems of every template. */
    static DiagnosisTrial over(final int problems) {
        final DiagnosisTrial trial = new DiagnosisTrial(1982);
        for (final Template template : Banks.read(List.of()).templates()) {
            for (int seed = 1; seed <= problems; seed++) {
                trial.all(template, seed);
            }
        }
        return trial;
    }

    private void all(final Template template, final int seed) {
        final Learners at = Learners.at(template, seed);
        final Learners next = Learners.at(template, seed + NEXT);
        for (int i = 0; i < EACH; i++) {
            pick(at, at.figures().singles()).ifPresent(slip -> single(at, slip));
            pick(at, at.figures().pairs()).ifPresent(pair -> pair(at, next, pair));
            nowhere(at);
        }
        final double rounded = at.inThreeFigures();
        final Mark mark = at.mark(rounded, 3, Evidence.NONE);
        tally(Count.ROUNDED, mark.isSound(), at, mark);
    }

    private Optional<Outcome> pick(final Learners at, final List<Outcome> outcomes) {
        final List<Outcome> all = outcomes.stream().filter(at::distinct).toList();
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(random.nextInt(all.size())));
    }

    private void single(final Learners at, final Outcome slip) {
        final Mark mark = looked(at, at.mark(slip.value(), TYPED, Evidence.NONE));
        final boolean byLimits = at.asked().quantity().chosen() && mark.isSound();
        if (byLimits) {
            return;
        }
        tally(Count.SINGLE, Learners.first(mark, slip.ids()), at, mark, slip);
        tally(Count.SINGLE_RIGHT, mark.isSound(), at, mark, slip);
        final Mark three = looked(at, at.mark(slip.value(), 3, Evidence.NONE));
        tally(Count.SINGLE_THREE, Learners.first(three, slip.ids()), at, three, slip);
        if (three.ask().isPresent() && !three.explained().isEmpty()) {
            final Map<Ref, Mark> marks = at.settled(three, slip, 3);
            final boolean named =
                    marks.values().stream()
                            .anyMatch(
                                    mark2 ->
                                            mark2.diagnosis().settled()
                                                    && Learners.first(mark2, slip.ids()));
            tally(Count.SINGLE_ASKED, named, at, marks.get(at.asked()), slip);
        }
    }

    private void pair(final Learners at, final Learners next, final Outcome pair) {
        final Mark mark = looked(at, at.mark(pair.value(), TYPED, Evidence.NONE));
        if (mark.isSound()) {
            return;
        }
        final boolean once = said(at, pair, mark, TYPED);
        final boolean point = pair.ids().contains("power-of-ten");
        tally(point ? Count.PAIR_OF_POINT : Count.PAIR, once, at, mark, pair);
        final Mark three = looked(at, at.mark(pair.value(), 3, Evidence.NONE));
        if (!point && !three.isSound()) {
            tally(Count.PAIR_THREE, said(at, pair, three, 3), at, three, pair);
        }
        final Evidence evidence = Evidence.of(List.of(), Marker.suspectedIds(mark));
        final Optional<Outcome> again =
                next.figures().pairs().stream()
                        .filter(p -> p.ids().equals(pair.ids()) && lines(p).equals(lines(pair)))
                        .filter(next::distinct)
                        .findFirst();
        again.ifPresent(
                second -> {
                    final Mark later = looked(next, next.mark(second.value(), TYPED, evidence));
                    final boolean twice = once || said(next, second, later, TYPED);
                    tally(
                            point ? Count.PAIR_OF_POINT_TWICE : Count.PAIR_TWICE,
                            twice,
                            next,
                            later,
                            second);
                });
    }

    private static List<Integer> lines(final Outcome outcome) {
        return outcome.changes().stream().map(Change::line).toList();
    }

    /** Whether the pair is said, at once or after the line that is asked for. */
    private boolean said(final Learners at, final Outcome pair, final Mark mark, final int digits) {
        if (mark.ask().isEmpty()) {
            return Learners.first(mark, pair.ids());
        }
        final Map<Ref, Mark> marks = at.settled(mark, pair, digits);
        marks.values().forEach(each -> looked(at, each));
        final Mark line = marks.get(mark.ask().orElseThrow());
        final Mark last = marks.get(at.asked());
        return Learners.first(last, pair.ids())
                || (Learners.first(line, pair.ids().subList(0, 1))
                        && Learners.first(last, pair.ids().subList(1, 2)));
    }

    private void nowhere(final Learners at) {
        final double value = at.fromNowhere(random);
        for (final int digits : List.of(3, 4)) {
            final Mark mark = looked(at, at.mark(value, digits, Evidence.NONE));
            if (!mark.isSound()) {
                final Count count = digits == 3 ? Count.CHANCE : Count.CHANCE_FOUR;
                tally(count, mark.diagnosis().settled(), at, mark);
            }
        }
    }

    /** Every explanation is looked at for its danger and its length. */
    private Mark looked(final Learners at, final Mark mark) {
        final Ref ref = mark.ref();
        if (Figures.read(mark.given(), ref.quantity().dimension(), false)
                        instanceof Reading.Read read
                && !mark.isSound()) {
            final double ceiling = at.worked().value(Quantity.FUSE_CEILING).orElse(Double.NaN);
            final double right = at.worked().value(ref).orElseThrow();
            final Optional<Dangers> danger =
                    Dangers.of(ref.quantity(), read.value(), right, ceiling);
            final boolean fire = danger.filter(d -> d.danger() == Danger.FIRE).isPresent();
            if (fire) {
                tally(Count.DANGER, saidFirst(mark, danger.orElseThrow()), at, mark);
            }
            final int warning = danger.map(DiagnosisTrial::length).orElse(0);
            tally(Count.LONG, mark.explanation().split(" ").length > 46 + warning, at, mark);
        }
        return mark;
    }

    private static boolean saidFirst(final Mark mark, final Dangers danger) {
        final String text = DANGERS.getString(danger.key());
        return mark.danger().equals(Optional.of(Danger.FIRE))
                && mark.explanation().startsWith(text.substring(0, text.indexOf('{')));
    }

    private static int length(final Dangers danger) {
        return DANGERS.getString(danger.key()).split(" ").length;
    }

    private void tally(
            final Count count,
            final boolean so,
            final Learners at,
            final Mark mark,
            final Outcome... slips) {
        final int[] both = counts.get(count);
        both[0] += so ? 1 : 0;
        both[1]++;
        final boolean fault =
                switch (count) {
                    case SINGLE_RIGHT, CHANCE, CHANCE_FOUR, LONG -> so;
                    default -> !so;
                };
        if (fault) {
            notes.get(count)
                    .add(
                            at.asked().quantity().id()
                                    + " "
                                    + mark.given()
                                    + " right "
                                    + at.right()
                                    + " "
                                    + List.of(slips).stream().map(Outcome::ids).toList()
                                    + " said "
                                    + Marker.ids(mark)
                                    + " ask "
                                    + mark.ask()
                                    + " susp "
                                    + Marker.suspectedIds(mark)
                                    + " | "
                                    + mark.explanation());
        }
    }

    /** The share, from 0 to 1. */
    double share(final Count count) {
        return (double) counts.get(count)[0] / counts.get(count)[1];
    }

    /** How many answers were looked at. */
    int of(final Count count) {
        return counts.get(count)[1];
    }

    String table() {
        final StringBuilder table = new StringBuilder();
        counts.forEach(
                (count, both) ->
                        table.append(
                                String.format(
                                        Locale.ROOT,
                                        "%-56s %6d of %6d  %6.2f %%%n",
                                        count.words,
                                        both[0],
                                        both[1],
                                        100.0 * both[0] / both[1])));
        return table.toString();
    }

    /** About 10,000 answers; with a number of problems a template, so many. */
    public static void main(final String[] args) {
        final DiagnosisTrial trial = over(args.length > 0 ? Integer.parseInt(args[0]) : 16);
        System.out.print(trial.table());
        trial.notes.forEach(
                (count, list) ->
                        list.stream()
                                .limit(Integer.getInteger("notes", 0))
                                .forEach(n -> System.out.println(count + ": " + n)));
    }
}
