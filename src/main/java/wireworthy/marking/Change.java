package wireworthy.marking;

import wireworthy.working.SlipAt;

/** One thing gone wrong in a working. */
public sealed interface Change {
    /** Id of the catalogue of slips. */
    String id();

    /**
     * The line where it happens: its number in the plan, -1 for a given, the last for the result.
     */
    int line();

    /** A line worked in a wrong way. */
    record AtLine(SlipAt at) implements Change {
        @Override
        public String id() {
            return at.slip().id();
        }

        @Override
        public int line() {
            return at.step();
        }
    }

    /**
     * A given read wrongly.
     *
     * @param place the given's place in the plan
     * @param value the SI value it was read as
     */
    record Misread(String id, int place, double value) implements Change {
        @Override
        public int line() {
            return -1;
        }
    }

    /**
     * The result itself put down wrongly.
     *
     * @param line the line of the result
     * @param factor what it was multiplied by
     */
    record OfResult(String id, int line, double factor) implements Change {}
}
