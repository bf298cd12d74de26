package wireworthy.evening.called;

import wireworthy.marking.Comparison;

/** One line of what is shown line by line. */
public sealed interface WallLine {
    /** A line of a working. */
    record Sum(Comparison.Row row) implements WallLine {}

    /** A sentence, and why. */
    record Words(String text, String why) implements WallLine {}
}
