package wireworthy.marking;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.ResourceBundle;
import wireworthy.marking.Tallies.Count;
import wireworthy.practice.Banks;
import wireworthy.practice.Template;
import wireworthy.rules.Figures;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.working.Danger;

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

    /** 45 beside the danger, in whose length each of two figures counts one word, not two. */
    private static final int WORDS = 45 + 1;

    private final Tallies tallies = new Tallies();

    /**
     * Of the template, so that a new slip leaves the answers to all other templates as they were.
     */
    private Random random = new Random();

    private DiagnosisTrial() {}

    /** So many problems of every template. */
    static DiagnosisTrial over(final int problems) {
        final DiagnosisTrial trial = new DiagnosisTrial();
        for (final Template template : figures()) {
            trial.random = new Random(template.fullId().hashCode());
            for (int seed = 1; seed <= problems; seed++) {
                trial.all(template, seed);
            }
        }
        return trial;
    }

    private static List<Template> figures() {
        return Banks.read(List.of()).templates().stream().filter(Template::asksFigures).toList();
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
        tally(Count.ROUNDED, mark.isSound(), mark);
    }

    private Optional<Outcome> pick(final Learners at, final List<Outcome> outcomes) {
        final List<Outcome> all = outcomes.stream().filter(at::distinct).toList();
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(random.nextInt(all.size())));
    }

    private void single(final Learners at, final Outcome slip) {
        final Mark mark = looked(at, at.mark(slip.value(), TYPED, Evidence.NONE));
        if (at.asked().quantity().chosen() && mark.isSound()) {
            return;
        }
        tally(Count.SINGLE, Learners.first(mark, slip.ids()), mark, slip);
        tally(Count.SINGLE_RIGHT, mark.isSound(), mark, slip);
        final Mark three = looked(at, at.mark(slip.value(), 3, Evidence.NONE));
        if (three.ask().isPresent() && !three.explained().isEmpty()) {
            final boolean named =
                    at.settled(three, slip, 3).values().stream()
                            .filter(each -> each.diagnosis().settled())
                            .anyMatch(each -> Learners.first(each, slip.ids()));
            tally(Count.SINGLE_ASKED, named, three, slip);
        }
    }

    private void pair(final Learners at, final Learners next, final Outcome pair) {
        final Mark mark = looked(at, at.mark(pair.value(), TYPED, Evidence.NONE));
        if (mark.isSound()) {
            return;
        }
        final boolean once = said(at, pair, mark, TYPED);
        final boolean point = pair.ids().contains("power-of-ten");
        tally(point ? Count.POINT : Count.PAIR, once, mark, pair);
        if (point && at.shownOnTheWay(pair)) {
            tally(Count.POINT_LINE, once, mark, pair);
        }
        final Mark three = looked(at, at.mark(pair.value(), 3, Evidence.NONE));
        if (!point && !three.isSound()) {
            tally(Count.PAIR_THREE, said(at, pair, three, 3), three, pair);
        }
        final Evidence evidence = Evidence.of(List.of(), Marker.suspectedIds(mark));
        same(next, pair)
                .ifPresent(
                        second -> {
                            final Mark later = next.mark(second.value(), TYPED, evidence);
                            final boolean twice =
                                    once || said(next, second, looked(next, later), TYPED);
                            final Count count = point ? Count.POINT_TWICE : Count.PAIR_TWICE;
                            tally(count, twice, later, second);
                        });
    }

    /** The same slips at the same lines of another problem. */
    private static Optional<Outcome> same(final Learners next, final Outcome pair) {
        return next.figures().pairs().stream()
                .filter(other -> other.ids().equals(pair.ids()))
                .filter(other -> lines(other).equals(lines(pair)))
                .filter(next::distinct)
                .findFirst();
    }

    private static List<Integer> lines(final Outcome outcome) {
        return outcome.changes().stream().map(Change::line).toList();
    }

    /**
     * Whether the pair is said, at once or after the line that is asked for: there the first slip,
     * and of the answer that it follows or is the second slip. Where the figure itself is asked for
     * once more, its decimal point is right then and the other slip is named.
     */
    private boolean said(final Learners at, final Outcome pair, final Mark mark, final int digits) {
        if (mark.ask().isEmpty()) {
            return Learners.first(mark, pair.ids());
        }
        final Map<Ref, Mark> marks = at.settled(mark, pair, digits);
        marks.values().forEach(each -> looked(at, each));
        final Mark line = marks.get(mark.ask().orElseThrow());
        final Mark last = marks.get(at.asked());
        final boolean rest =
                line.equals(last)
                        || last.follows()
                        || Learners.first(last, pair.ids().subList(1, 2));
        return Learners.first(last, pair.ids())
                || (Learners.first(line, pair.ids().subList(0, 1)) && rest);
    }

    private void nowhere(final Learners at) {
        final double value = at.fromNowhere(random);
        for (final int digits : List.of(3, 4)) {
            final Mark mark = looked(at, at.mark(value, digits, Evidence.NONE));
            if (!mark.isSound() && !mark.ref().quantity().chosen()) {
                final Count count = digits == 3 ? Count.NO_SLIP : Count.NO_SLIP_FOUR;
                tally(count, mark.diagnosis().settled(), mark);
                tally(Count.NO_SLIP_LINE, inTheEnd(at, mark).diagnosis().settled(), mark);
            }
        }
    }

    /** The mark once the line asked for, if any, has been answered soundly. */
    private static Mark inTheEnd(final Learners at, final Mark mark) {
        final Outcome sound = new Outcome(List.of(), at.right());
        return mark.ask().isEmpty()
                ? mark
                : Objects.requireNonNull(at.settled(mark, sound, TYPED).get(at.asked()));
    }

    /** Every explanation is looked at for its danger and its length. */
    private Mark looked(final Learners at, final Mark mark) {
        final Ref ref = mark.ref();
        if (Figures.read(mark.given(), ref.quantity().dimension(), false)
                        instanceof Reading.Read read
                && !mark.isSound()) {
            final double right = at.worked().value(ref).orElseThrow();
            final Optional<Dangers> danger =
                    Dangers.of(at.worked(), ref.quantity(), read.value(), right);
            final boolean fire = danger.filter(d -> d.danger() == Danger.FIRE).isPresent();
            if (fire) {
                tally(Count.DANGER, saidFirst(mark, danger.orElseThrow()), mark);
            }
            final int most = WORDS + danger.map(DiagnosisTrial::length).orElse(0);
            tally(Count.LONG, mark.explanation().split(" ").length > most, mark);
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
            final Count count, final boolean so, final Mark mark, final Outcome... slips) {
        tallies.add(count, so, () -> described(mark, slips));
    }

    private static String described(final Mark mark, final Outcome... slips) {
        return "%s %s by %s, said %s: %s"
                .formatted(
                        mark.ref().quantity().id(),
                        mark.given(),
                        Arrays.stream(slips).map(Outcome::ids).toList(),
                        Marker.ids(mark),
                        mark.explanation());
    }

    Tallies tallies() {
        return tallies;
    }

    /** Sixteen problems of every template, or as many as are wanted. */
    public static void main(final String[] args) {
        final DiagnosisTrial trial = over(args.length > 0 ? Integer.parseInt(args[0]) : 16);
        System.out.print(trial.tallies().table());
    }
}
