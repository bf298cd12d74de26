package wireworthy.vehicle.check;

import static wireworthy.rules.Quantity.FUSE_CEILING;

import java.util.List;
import java.util.Optional;
import wireworthy.working.Caution;
import wireworthy.working.Solver;
import wireworthy.working.Unworkable;

/**
 * A cable whose ampacity its table does not tell: no fuse can be said to protect it.
 *
 * @param typed whether a section was typed; without one nothing is said
 */
record Unprotected(Solver solver, Sums sums, boolean typed) {
    /** Why, and what other tables say of such a cable. */
    List<FieldNote> notes() {
        return why()
                .map(why -> Said.of("no-ceiling", "why", InWords.of(why)))
                .map(text -> FieldNote.wrong("given.section", text + others().told()))
                .stream()
                .toList();
    }

    /** A fuse above what the lowest of the other tables allows. */
    List<Caution> cautions() {
        return why().flatMap(any -> others().caution()).stream().toList();
    }

    private Optional<Unworkable> why() {
        return typed && sums.value(FUSE_CEILING).isEmpty()
                ? sums.worked().flatMap(worked -> worked.problem(FUSE_CEILING))
                : Optional.empty();
    }

    private OtherTables others() {
        return new OtherTables(solver, sums);
    }
}
