package wireworthy.evening.summary;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import wireworthy.evening.Asked;
import wireworthy.evening.Sheet;
import wireworthy.evening.handin.HandIn;
import wireworthy.evening.handin.Reply;
import wireworthy.marking.Outcome;
import wireworthy.marking.SlipFigures;
import wireworthy.practice.Exercise;
import wireworthy.practice.Problem;
import wireworthy.rules.FigureText;

/**
 * A class, made up. Who can make one of the slips common in it makes it at every other problem, and
 * at one in twenty any other. The same seed gives the same class.
 */
public final class MadeUpClass {
    public static final Instant NOW = Instant.parse("2026-03-04T19:05:06Z");

    private final Sheet sheet;
    private final Set<String> common;
    private final SplittableRandom random;

    /**
     * @param common ids of slips
     */
    public MadeUpClass(final Sheet sheet, final Set<String> common, final long seed) {
        this.sheet = sheet;
        this.common = common;
        random = new SplittableRandom(seed);
    }

    /** All that learners of the sheet hand in; one wants help with the problem of their number. */
    public List<HandIn> handIns() {
        final List<HandIn> group = new ArrayList<>();
        for (int learner = 1; learner <= sheet.learners(); learner++) {
            group.add(handIn(learner));
        }
        return group;
    }

    HandIn handIn(final int learner) {
        HandIn handIn = HandIn.begun(sheet.mark(), learner, "=Wren" + learner, NOW);
        for (int problem = 1; problem <= sheet.problems(); problem++) {
            final Exercise exercise = sheet.exercise(learner, problem);
            final List<String> typed = new ArrayList<>();
            Asked.of(exercise).forEach(asked -> typed.add(asked.right()));
            if (exercise instanceof Problem each) {
                slip(each).ifPresent(figure -> typed.set(typed.size() - 1, figure));
            }
            handIn = handIn.with(new Reply(problem, typed, learner == problem, NOW));
        }
        return handIn;
    }

    private Optional<String> slip(final Problem problem) {
        final List<Outcome> slips =
                SlipFigures.of(problem.worked(), problem.asked()).stream()
                        .filter(it -> Double.isFinite(it.value()))
                        .toList();
        final Optional<Outcome> known =
                slips.stream().filter(it -> common.contains(it.ids().get(0))).findFirst();
        final Optional<Outcome> made =
                random.nextInt(2) == 0
                        ? known
                        : Optional.of(slips.get(random.nextInt(slips.size())))
                                .filter(it -> random.nextInt(10) == 0);
        return made.map(it -> FigureText.of(it.value(), problem.asked().quantity().dimension(), 4));
    }
}
