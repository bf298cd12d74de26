package wireworthy.window.evening;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import wireworthy.marking.Evidence;
import wireworthy.practice.Exercise;
import wireworthy.practice.LineByLine;
import wireworthy.practice.Problem;
import wireworthy.practice.ProblemLine;
import wireworthy.practice.Skills;
import wireworthy.rules.Skill;
import wireworthy.window.AnswerDesk;
import wireworthy.window.Attempt;

/**
 * Exercises of a sheet as they are done: nothing is known of the learner, answers go to a hand-in.
 */
final class SheetDesk implements AnswerDesk {
    private final Supplier<Optional<String>> keeping;

    /**
     * @param keeping keeps what stands there now; says why that was not possible
     */
    SheetDesk(final Supplier<Optional<String>> keeping) {
        this.keeping = keeping;
    }

    @Override
    public List<ProblemLine> lines(final Problem problem) {
        return LineByLine.of(problem, Skills.NONE, 0);
    }

    @Override
    public Evidence evidence() {
        return Evidence.NONE;
    }

    @Override
    public Optional<String> keep(
            final Exercise exercise,
            final Attempt attempt,
            final Skill skill,
            final boolean aided,
            final double seconds) {
        return keeping.get();
    }
}
