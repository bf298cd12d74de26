package wireworthy.marking;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wireworthy.rules.Figures;
import wireworthy.rules.Quantity;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.working.Plan;
import wireworthy.working.Worked;

/** Marks answers and says which slips explain them. */
public final class Marker {
    private static final double EARLY_ROUNDING = 0.03;

    private final Worked worked;
    private final Evidence evidence;
    private final Explaining explaining;
    private final OwnLines own;

    private Marker(final Worked worked, final Evidence evidence) {
        this.worked = worked;
        this.evidence = evidence;
        this.explaining = new Explaining(worked, evidence.asking());
        this.own = new OwnLines(worked, evidence.sound());
    }

    /** Marks the answers of a question that stand on the way, in the order of the working. */
    public static List<Mark> marks(final Worked worked) {
        return marks(worked, Evidence.NONE);
    }

    /** Marks the answers of a question, of which something else is known. */
    public static List<Mark> marks(final Worked worked, final Evidence evidence) {
        final Map<Ref, String> typed = new LinkedHashMap<>();
        worked.question()
                .answers()
                .forEach(
                        (quantity, text) ->
                                onTheWay(worked, quantity).ifPresent(ref -> typed.put(ref, text)));
        return marks(worked, typed, evidence);
    }

    /** Marks one answer on its own. */
    public static Mark mark(final Worked worked, final Ref ref, final String typed) {
        return mark(worked, ref, typed, Evidence.NONE);
    }

    /** Marks one answer on its own, of a learner of whom something is known. */
    public static Mark mark(
            final Worked worked, final Ref ref, final String typed, final Evidence evidence) {
        return marks(worked, Map.of(ref, typed), evidence).get(0);
    }

    /** Marks several answers, each judged also from the learner's own earlier ones. */
    public static List<Mark> marks(final Worked worked, final Map<Ref, String> typed) {
        return marks(worked, typed, Evidence.NONE);
    }

    /** Marks several answers of a learner of whom something is known. */
    public static List<Mark> marks(
            final Worked worked, final Map<Ref, String> typed, final Evidence evidence) {
        return typed.isEmpty() ? List.of() : new Marker(worked, evidence).inOrder(typed);
    }

    private List<Mark> inOrder(final Map<Ref, String> typed) {
        typed.forEach(this::expect);
        return typed.entrySet().stream()
                .sorted(Comparator.comparingInt(e -> place(worked.plan(), e.getKey())))
                .map(e -> next(e.getKey(), e.getValue()))
                .toList();
    }

    private void expect(final Ref ref, final String typed) {
        if (reading(ref, typed) instanceof Reading.Read read) {
            own.expect(ref, read);
        }
    }

    private static Reading reading(final Ref ref, final String typed) {
        return Figures.read(typed, ref.quantity().dimension(), false);
    }

    /** What is said before all else of a figure that could start a fire; empty for another. */
    public static Optional<String> fire(
            final Worked worked, final Ref ref, final Reading.Read read) {
        return Explaining.fire(worked, ref, read);
    }

    /**
     * What an answered quantity stands for, if a line of the working gives it, or if it is a given
     * in a unit that is easily misread.
     */
    public static Optional<Ref> onTheWay(final Worked worked, final Quantity quantity) {
        final List<Ref> refs =
                worked.refs(quantity).stream()
                        .filter(ref -> !worked.plan().assumed().contains(ref))
                        .filter(ref -> !given(worked, ref) || Misreadings.of(worked, ref))
                        .toList();
        return refs.size() == 1 ? Optional.of(refs.get(0)) : Optional.empty();
    }

    private static boolean given(final Worked worked, final Ref ref) {
        return worked.question().figures().containsKey(ref);
    }

    private static int place(final Plan plan, final Ref ref) {
        return plan.placeOf(ref).orElseThrow();
    }

    private Mark next(final Ref ref, final String typed) {
        final Reading reading = reading(ref, typed);
        if (reading instanceof Reading.Read read) {
            return new Answer(ref, typed, read).marked();
        }
        final String words =
                reading instanceof Reading.Unclear unclear
                        ? unclear.question()
                        : ((Reading.Unreadable) reading).message();
        return new Mark(ref, typed, reading, Optional.empty(), false, Diagnosis.NONE, words);
    }

    /** One answer that could be read. */
    private final class Answer {
        private final Ref ref;
        private final String typed;
        private final Reading.Read read;
        private final double right;
        private final SlipFigures figures;

        private Answer(final Ref ref, final String typed, final Reading.Read read) {
            this.ref = ref;
            this.typed = typed;
            this.read = read;
            this.right = worked.values()[place(worked.plan(), ref)];
            this.figures = SlipFigures.carriedOn(worked, ref, own.pinned());
        }

        private Mark marked() {
            if (Soundness.belowNothing(ref, read)) {
                return unsound(false, Diagnosis.NONE, explaining.negative(ref, read));
            }
            final Mark mark = judged();
            own.add(ref, read);
            return mark;
        }

        private Mark judged() {
            if (holdsFor(worked.values()) || rounded(SlipFigures.FIGURES_KEPT)) {
                return sound(explaining.sound(ref, read, right));
            }
            if (holdsFor(figures.run(List.of()))) {
                return followed();
            }
            final Diagnosing diagnosing = new Diagnosing(worked, ref, read, own, evidence);
            if ((rounded(1) || rounded(2)) && !diagnosing.oneSlipFits()) {
                return sound(explaining.roundedEarly(ref, read, right));
            }
            return diagnosed(diagnosing.diagnosis());
        }

        private boolean holdsFor(final double[] values) {
            return Soundness.holds(worked.plan(), values, ref, read);
        }

        private Mark sound(final String words) {
            return new Mark(ref, typed, read, Optional.of(true), true, Diagnosis.NONE, words);
        }

        private Mark unsound(final boolean follows, final Diagnosis diagnosis, final String words) {
            return new Mark(ref, typed, read, Optional.of(false), follows, diagnosis, words);
        }

        private Mark followed() {
            final Optional<Dangers> danger = danger();
            return unsound(
                    true,
                    Diagnosis.NONE.leadingTo(danger.map(Dangers::danger)),
                    explaining.followed(ref, read, right, danger, own.lastUnsound(ref)));
        }

        private Mark diagnosed(final Diagnosis found) {
            final Optional<Dangers> danger = danger();
            final Diagnosis whole =
                    (found.explained().isEmpty() ? found.openedAt(own.firstOpen(ref)) : found)
                            .leadingTo(danger.map(Dangers::danger));
            return unsound(false, whole, explaining.unsound(ref, read, right, whole, danger));
        }

        /** Whether the figure comes of keeping so many figures on the way. */
        private boolean rounded(final int kept) {
            if (ref.quantity().chosen()
                    || !(Math.abs(read.value() - right) <= EARLY_ROUNDING * Math.abs(right))) {
                return false;
            }
            final double window = read.lastDigit() / 2 + Fit.WINDOW * Math.abs(read.value());
            return figures.roundedTo(kept, read.value() - window, read.value() + window);
        }

        private Optional<Dangers> danger() {
            return Dangers.of(worked, ref.quantity(), read.value(), right);
        }
    }

    /** The slips of a mark by id, alternatives in order. */
    public static List<List<String>> ids(final Mark mark) {
        return mark.explained().stream().map(Outcome::ids).toList();
    }

    /** The pairs of slips that fit the figure of a mark, by id. */
    public static List<List<String>> suspectedIds(final Mark mark) {
        return mark.suspected().stream().map(Outcome::ids).toList();
    }
}
