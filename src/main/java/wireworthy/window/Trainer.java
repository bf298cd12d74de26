package wireworthy.window;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.CompletableFuture;
import wireworthy.practice.Exercise;
import wireworthy.rules.Skill;

/** What the Practice place needs of the banks, the choice of exercises and the record. */
public interface Trainer extends AnswerDesk {
    /** A topic to choose: a bank. */
    record Topic(String id, String title) {}

    /**
     * The next exercise.
     *
     * @param why one line that says why it was chosen
     * @param topic the topic of the lesson that asks it; empty where none does
     */
    record Next(Exercise exercise, String why, Optional<String> topic) {
        /** One that no lesson asks. */
        Next(final Exercise exercise, final String why) {
            this(exercise, why, Optional.empty());
        }

        /** The same, with something said before why it was chosen. */
        Next after(final String said) {
            return new Next(exercise, said + " " + why, topic);
        }
    }

    /** Done once the record has been read; after an update a long one takes its time. */
    default CompletableFuture<Void> reading() {
        return CompletableFuture.completedFuture(null);
    }

    /** How many answers are being read; empty while that is not known. */
    default OptionalLong toRead() {
        return OptionalLong.empty();
    }

    /** The topics at hand, in order. */
    List<Topic> topics();

    /** What of the banks could not be read, in words with file and line. */
    List<String> troubles();

    /** What is wrong with the record or the clock, in words. */
    List<String> notices();

    /** The code name under which answers are kept. */
    String person();

    /** How long the sitting has lasted where now is a good moment to stop; empty where not. */
    Optional<Duration> mayEnd();

    /** An exercise of a skill that the learner chose; empty where no bank has any. */
    Optional<Next> of(Skill skill);

    /** The next exercise of a topic, or of all topics; none where no bank could be read. */
    Optional<Next> next(Optional<String> topic);

    /**
     * The exercise of this name as it was drawn before; empty where there is none, or where it was
     * answered meanwhile.
     */
    default Optional<Next> again(final String name) {
        return Optional.empty();
    }

    /** Why the exercise of this name is not shown again, where that needs a word. */
    default Optional<String> whyNot(final String name) {
        return Optional.empty();
    }

    /** Leaves an exercise: another comes next, instead of one that has no answer yet. */
    default void passBy(final Exercise exercise) {}

    /** The same exercise in the language in use; empty where it can't be had. */
    default Optional<Next> same(final Exercise earlier) {
        return Optional.empty();
    }

    /** What a lesson wanted to ask is not asked any more. */
    void leaveLesson();

    /** An exercise like this one with new numbers. */
    Next twin(Exercise exercise);

    /** How firmly a skill holds, in a word. */
    String state(Skill skill);
}
