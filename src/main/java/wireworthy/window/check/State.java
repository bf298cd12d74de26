package wireworthy.window.check;

import java.util.List;
import java.util.Set;
import wireworthy.marking.Mark;
import wireworthy.vehicle.check.CheckedCircuit;
import wireworthy.vehicle.check.CheckedPart;
import wireworthy.vehicle.check.FieldNote;
import wireworthy.window.parts.Icon;
import wireworthy.window.parts.Verdict;
import wireworthy.working.Caution;
import wireworthy.working.Danger;

/** How a part of a vehicle stands, the worst first; each with its sign and its words. */
enum State {
    FIRE("✗", Verdict.UNSOUND),
    WILL_NOT_WORK("!", Verdict.CAUTION),
    /** More volts are lost than the limit allows; it may run all the same. */
    OVER_LIMIT("!", Verdict.CAUTION),
    /** Fewer volts were measured than worked: a joint may be growing warm. */
    LESS_ARRIVES("↓", Verdict.CAUTION, Icon.LESS),
    /** A figure is more likely to have another unit, or one of the builder's own is not sound. */
    DIFFERS("?", Verdict.CAUTION, Icon.QUESTION),
    INCOMPLETE("…", Verdict.CAUTION, Icon.OPEN),
    /** It holds, but in warm cable no longer. */
    ONLY_JUST("≈", Verdict.CAUTION, Icon.ABOUT),
    SOUND("✓", Verdict.SOUND);

    /** What has to be known before the supply or the main fuse can be called sound. */
    private static final Set<String> NEEDED =
            Set.of(
                    "given.supply-voltage",
                    "given.main-fuse",
                    "given.section",
                    "given.breaking-capacity");

    /**
     * What has to be known before the energy of the supply is; nothing is unsafe for want of it.
     */
    private static final Set<String> FOR_ENERGY = Set.of(FieldNote.ENERGY, FieldNote.BATTERY);

    private final String sign;
    private final Verdict verdict;
    private final Icon icon;

    State(final String sign, final Verdict verdict) {
        this(sign, verdict, verdict.icon());
    }

    State(final String sign, final Verdict verdict, final Icon icon) {
        this.sign = sign;
        this.verdict = verdict;
        this.icon = icon;
    }

    /** How a circuit stands. */
    static State of(final CheckedCircuit circuit) {
        final boolean known =
                circuit.fuse().known()
                        && circuit.dropFromBoard().isPresent()
                        && circuit.notes().isEmpty();
        return of(circuit.cautions(), known, differs(circuit.notes(), circuit.marks()));
    }

    /** How the supply or the main fuse stands. */
    static State of(final CheckedPart part) {
        final boolean known =
                part.notes().stream().noneMatch(it -> isOpen(it) || isOfEnergy(it))
                        && part.found().stream().anyMatch(found -> found.value().isPresent());
        return of(part.cautions(), known, differs(part.notes(), part.marks()));
    }

    /** Whether the supply or the main fuse can't be called sound before it is seen to. */
    static boolean isOpen(final FieldNote note) {
        return note.kind() == FieldNote.Kind.WRONG
                || (note.kind() == FieldNote.Kind.MISSING && NEEDED.contains(note.where()));
    }

    private static boolean isOfEnergy(final FieldNote note) {
        return FOR_ENERGY.contains(note.where());
    }

    private static boolean differs(final List<FieldNote> notes, final List<Mark> marks) {
        return notes.stream().anyMatch(note -> note.kind() == FieldNote.Kind.DOUBT)
                || marks.stream().anyMatch(mark -> !mark.isSound());
    }

    private static State of(
            final List<Caution> cautions, final boolean known, final boolean differs) {
        if (has(cautions, Danger.FIRE)) {
            return FIRE;
        }
        if (has(cautions, Danger.WILL_NOT_WORK)) {
            return WILL_NOT_WORK;
        }
        if (has(cautions, Danger.OVER_LIMIT)) {
            return OVER_LIMIT;
        }
        if (has(cautions, Danger.LESS_ARRIVES)) {
            return LESS_ARRIVES;
        }
        if (differs) {
            return DIFFERS;
        }
        if (!known) {
            return INCOMPLETE;
        }
        return has(cautions, Danger.ONLY_JUST) ? ONLY_JUST : SOUND;
    }

    private static boolean has(final List<Caution> cautions, final Danger danger) {
        return cautions.stream().anyMatch(caution -> caution.danger() == danger);
    }

    /** How it stands in words, without the sign. */
    String words() {
        return CheckTexts.of("state." + name().toLowerCase(java.util.Locale.ROOT));
    }

    /** The sign and the words. */
    String text() {
        return sign + " " + words();
    }

    /** The sign, drawn. */
    Icon icon() {
        return icon;
    }

    Verdict verdict() {
        return verdict;
    }
}
