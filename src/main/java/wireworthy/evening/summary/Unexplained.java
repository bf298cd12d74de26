package wireworthy.evening.summary;

/**
 * An answer that is wrong and that no known slip gives: the working has to be looked at.
 *
 * @param problem its number, from 1
 * @param skill of the problem
 * @param typed as it was handed in
 * @param who the learner's label
 */
public record Unexplained(int problem, String skill, String typed, String who) {}
