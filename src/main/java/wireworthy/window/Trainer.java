package wireworthy.window;

import java.util.List;
import java.util.Optional;
import wireworthy.marking.Mark;
import wireworthy.practice.Problem;
import wireworthy.practice.ProblemLine;
import wireworthy.rules.Skill;

/** What the Practice place needs of the banks, the choice of problems and the record. */
public interface Trainer {
    /** A topic to choose: a bank. */
    record Topic(String id, String title) {}

    /**
     * The next problem.
     *
     * @param why one line that says why it was chosen
     */
    record Next(Problem problem, String why) {}

    /** The topics at hand, in order. */
    List<Topic> topics();

    /** What of the banks could not be read, in words with file and line. */
    List<String> troubles();

    /** The next problem of a topic, or of all topics; none where no bank could be read. */
    Optional<Next> next(Optional<String> topic);

    /** A problem like this one with new numbers. */
    Next twin(Problem problem);

    /** The lines of the working, fitted to how firmly their skills hold; the last is the answer. */
    List<ProblemLine> lines(Problem problem);

    /**
     * Keeps an answer to a line or the problem. On disk when it returns.
     *
     * @param skill what the answered line exercises
     * @return why it could not be kept, in words; empty where it was
     */
    Optional<String> keep(Problem problem, Mark mark, Skill skill, boolean aided, double seconds);

    /** How firmly a skill holds, in a word. */
    String state(Skill skill);
}
