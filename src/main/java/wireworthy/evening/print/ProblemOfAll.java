package wireworthy.evening.print;

import java.util.List;
import wireworthy.evening.CodeNames;
import wireworthy.practice.Exercise;

/**
 * One problem of a sheet with the numbers of every learner.
 *
 * @param own whether the numbers differ
 * @param exercises of the learners, in the order of their numbers
 */
record ProblemOfAll(boolean own, CodeNames names, List<Exercise> exercises) {
    ProblemOfAll {
        exercises = List.copyOf(exercises);
    }

    /** The one to read: that of the first learner. */
    Exercise first() {
        return exercises.get(0);
    }

    String skill() {
        return first().skill().words();
    }

    /** Those to be told apart: one where all have the same numbers. */
    List<Exercise> different() {
        return own ? exercises : exercises.subList(0, 1);
    }

    /** Whose the numbers at a place of {@link #different} are. */
    String whose(final int place) {
        return own ? names.label(place + 1) : SheetPages.TEXTS.of("all");
    }
}
