package wireworthy.window;

import java.util.function.Consumer;
import wireworthy.practice.Exercise;
import wireworthy.rules.Skill;

/** Keeps the answers to one exercise, each with the time since the one before. */
final class Keeping {
    private final Exercise exercise;
    private final AnswerDesk desk;
    private final Consumer<String> notKept;
    private long since = System.nanoTime();
    private boolean aided;

    /**
     * @param notKept is told why an answer could not be kept, or nothing where it was
     */
    Keeping(final Exercise exercise, final AnswerDesk desk, final Consumer<String> notKept) {
        this.exercise = exercise;
        this.desk = desk;
        this.notKept = notKept;
    }

    /** Keeps an answer under the skill of the exercise; all but the first are aided. */
    void keep(final Attempt attempt) {
        keep(attempt, exercise.skill(), aided);
    }

    /** Keeps an answer to a line. */
    void keep(final Attempt attempt, final Skill skill, final boolean helped) {
        final double seconds = (System.nanoTime() - since) / 1e9;
        notKept.accept(desk.keep(exercise, attempt, skill, helped, seconds).orElse(""));
        aided = true;
        since = System.nanoTime();
    }

    /** Goes on where another window left off. */
    void takeOver(final Keeping earlier) {
        since = earlier.since;
        aided = earlier.aided;
    }

    /** From now on every answer is aided. */
    void aid() {
        aided = true;
    }
}
