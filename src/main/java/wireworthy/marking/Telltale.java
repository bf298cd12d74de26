package wireworthy.marking;

import static wireworthy.rules.Quantity.*;

import java.util.List;
import java.util.Optional;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.working.Worked;

/** The line of a page that comes out otherwise with each of several slips. */
record Telltale(Worked worked, Ref asked) {
    /** What a builder is likely to have, the first of the working first. */
    private static final List<Quantity> LINES = List.of(CIRCUIT_CURRENT, LOOP_RESISTANCE, DROP);

    private static final double SAME = 1e-6;

    Optional<Ref> of(final List<Outcome> explained) {
        final SlipFigures figures =
                SlipFigures.carriedOn(worked, asked, SlipFigures.nothingPinned(worked.plan()));
        final List<double[]> runs =
                explained.stream().map(outcome -> figures.run(outcome.changes())).toList();
        final OwnLines lines = new OwnLines(worked);
        return LINES.stream()
                .map(Ref::circuit)
                .filter(line -> lines.leadsTo(line, asked))
                .filter(line -> parts(runs, worked.plan().placeOf(line).orElseThrow()))
                .findFirst();
    }

    /** Whether the first of the slips shows there by itself. */
    private static boolean parts(final List<double[]> runs, final int place) {
        final double first = runs.get(0)[place];
        return runs.stream()
                .skip(1)
                .noneMatch(run -> Math.abs(run[place] - first) <= SAME * Math.abs(first));
    }
}
