package wireworthy.window;

import java.util.List;
import java.util.Optional;
import wireworthy.marking.Evidence;
import wireworthy.practice.Exercise;
import wireworthy.practice.Problem;
import wireworthy.practice.ProblemLine;
import wireworthy.rules.Skill;

/**
 * What an exercise that is being done needs: its lines, what is known of slips, a place to keep.
 */
public interface AnswerDesk {
    /** The lines of the working, fitted to how firmly their skills hold; the last is the answer. */
    List<ProblemLine> lines(Problem problem);

    /** What the answers to earlier exercises say about the slips of the next. */
    Evidence evidence();

    /**
     * Keeps an answer to an exercise or a line of it. On disk when it returns.
     *
     * @param skill what was exercised
     * @return why it could not be kept, in words; empty where it was
     */
    Optional<String> keep(
            Exercise exercise, Attempt attempt, Skill skill, boolean aided, double seconds);
}
