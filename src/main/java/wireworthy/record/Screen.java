package wireworthy.record;

/**
 * A screen of a lesson.
 *
 * @param number counted from 0
 */
public record Screen(String lesson, int number) {}
