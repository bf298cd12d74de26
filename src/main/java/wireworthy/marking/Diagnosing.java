package wireworthy.marking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.working.Worked;

/** Finds which slips explain an unsound figure, and how much can be said of them. */
final class Diagnosing {
    /** With more slips than these on the way, a figure of few digits is likelier a chance hit. */
    private static final int FEW_SLIPS = 7;

    private static final int ENOUGH_FIGURES = 4;

    /** What is put into a current that was right before, when a fuse is chosen by it. */
    private static final Set<String> MADE_LATER = Set.of("duty-on-cable");

    private final Worked worked;
    private final Ref ref;
    private final Reading.Read read;
    private final double right;
    private final OwnLines own;
    private final Evidence evidence;
    private final SlipFigures carried;
    private final List<Outcome> after;
    private final List<Outcome> alike;

    Diagnosing(
            final Worked worked,
            final Ref ref,
            final Reading.Read read,
            final OwnLines own,
            final Evidence evidence) {
        this.worked = worked;
        this.ref = ref;
        this.read = read;
        this.right = worked.values()[worked.plan().placeOf(ref).orElseThrow()];
        this.own = own;
        this.evidence = evidence;
        this.carried = SlipFigures.carriedOn(worked, ref, own.pinned());
        this.after = fitting(carried.singles());
        this.alike = fitting(carried.alike());
    }

    /**
     * The fewest slips first: those made after the learner's own lines; pairs that these lines
     * confirm; slips that the lines don't show; pairs.
     */
    Diagnosis diagnosis() {
        if (!after.isEmpty()) {
            return single(after, carried);
        }
        if (!alike.isEmpty()) {
            return Diagnosis.said(byEvidence(alike), Optional.empty());
        }
        final List<Outcome> confirmed = own.anyUnsound() ? confirmed() : List.of();
        if (!confirmed.isEmpty()) {
            return Diagnosis.said(confirmed, Optional.empty()).suspecting(confirmed);
        }
        final List<Outcome> unseen = own.none() ? List.of() : unseen();
        if (!unseen.isEmpty()) {
            return Diagnosis.said(byEvidence(unseen), Optional.empty());
        }
        return plainerThanAPair() ? Diagnosis.NONE : pairs();
    }

    /** On a page, the voltage of another system is likelier than two slips at once. */
    private boolean plainerThanAPair() {
        return !evidence.asking() && OtherVoltage.of(worked, ref, read).isPresent();
    }

    /** Whether one slip is enough to give the figure. */
    boolean oneSlipFits() {
        return !after.isEmpty() || !alike.isEmpty() || (!own.none() && !unseen().isEmpty());
    }

    private Diagnosis single(final List<Outcome> fitting, final SlipFigures figures) {
        final List<Outcome> ordered = byEvidence(fitting);
        final Outcome first = ordered.get(0);
        final boolean sure =
                !evidence.asking()
                        || !chancy(figures)
                        || !own.none()
                        || evidence.made(first) > 0
                        || own.goOnFrom(ref, figures.run(first.changes()));
        return Diagnosis.said(
                ordered,
                sure
                        ? Optional.empty()
                        : new Splitting(worked, figures).toBeSureOf(first, ref, FEW_SLIPS));
    }

    private boolean chancy(final SlipFigures figures) {
        return read.significantDigits() < ENOUGH_FIGURES && figures.count() > FEW_SLIPS;
    }

    /** Single slips before a line that was answered without them. */
    private List<Outcome> unseen() {
        final SlipFigures fresh = fresh();
        return fitting(fresh.singles()).stream()
                .filter(
                        s ->
                                !chancy(fresh)
                                        || MADE_LATER.containsAll(s.ids())
                                        || !own.contradict(fresh.run(s.changes())))
                .toList();
    }

    private List<Outcome> confirmed() {
        final SlipFigures fresh = fresh();
        return byEvidence(
                fitting(fresh.pairs()).stream()
                        .filter(fresh::needsBoth)
                        .filter(p -> own.confirm(fresh, p))
                        .toList());
    }

    private SlipFigures fresh() {
        return SlipFigures.carriedOn(worked, ref, SlipFigures.nothingPinned(worked.plan()));
    }

    /**
     * A pair is said where it happens twice, or where it alone is left after the learner's lines;
     * else the line that would show it is asked for.
     */
    private Diagnosis pairs() {
        final List<Outcome> pairs =
                fitting(carried.pairs()).stream().filter(carried::needsBoth).toList();
        final List<Outcome> again = pairs.stream().filter(evidence::suspects).toList();
        final Optional<Ref> ask =
                again.isEmpty() && evidence.asking() ? ask(pairs) : Optional.empty();
        final List<Outcome> said = ask.isEmpty() && aloneLeft(pairs) ? pairs : again;
        return Diagnosis.said(byEvidence(said), ask).suspecting(byEvidence(pairs));
    }

    private Optional<Ref> ask(final List<Outcome> pairs) {
        final Splitting splitting = new Splitting(worked, carried);
        final Optional<Ref> showing =
                splitting.amongPairs(pairs).or(() -> Splitting.pointPutRight(pairs, ref));
        return showing.isPresent() || pairs.isEmpty() || !own.none()
                ? showing
                : splitting.leaving(FEW_SLIPS, ref);
    }

    /** Whether the learner's lines leave so few slips that one pair, or its twins, is no chance. */
    private boolean aloneLeft(final List<Outcome> pairs) {
        return !own.none()
                && carried.count() <= FEW_SLIPS
                && pairs.stream().map(pair -> (float) pair.value()).distinct().count() == 1;
    }

    private List<Outcome> byEvidence(final List<Outcome> outcomes) {
        return outcomes.stream()
                .sorted(Comparator.comparingInt(outcome -> -evidence.made(outcome)))
                .toList();
    }

    /** In one digit nearly anything fits: what comes out just so is told before what is rounded. */
    private List<Outcome> fitting(final List<Outcome> outcomes) {
        final List<Outcome> fitting = allFitting(outcomes);
        final List<Outcome> asTyped =
                fitting.stream().filter(outcome -> Fit.asTyped(read, outcome.value())).toList();
        return read.significantDigits() > 1 || asTyped.isEmpty() ? fitting : asTyped;
    }

    /** Those that give the figure and are not right all the same; one for each set of slips. */
    private List<Outcome> allFitting(final List<Outcome> outcomes) {
        final List<Outcome> fitting = new ArrayList<>();
        for (final Outcome outcome : outcomes) {
            if (Fit.holds(ref, read, outcome.value())
                    && !asRight(outcome)
                    && fitting.stream().noneMatch(known -> known.ids().equals(outcome.ids()))) {
                fitting.add(outcome);
            }
        }
        return fitting;
    }

    private boolean asRight(final Outcome outcome) {
        return Math.abs(outcome.value() - right) <= Fit.WINDOW * Math.abs(right);
    }
}
