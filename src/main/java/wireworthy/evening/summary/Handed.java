package wireworthy.evening.summary;

/**
 * An answer as it was handed in, to be looked at: wrong, and no known slip gives it; or a note that
 * can't be read as an answer.
 *
 * @param problem its number, from 1
 * @param skill of the problem
 * @param typed as it was handed in
 * @param who the learner's label
 */
public record Handed(int problem, String skill, String typed, String who) {}
