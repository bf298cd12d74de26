package wireworthy.evening.called;

import java.util.List;

/** What became of a line that was typed: answers, or why none of it was taken. */
public sealed interface Taken {
    /** All that was called out. */
    record Answers(List<Called> called) implements Taken {
        public Answers {
            called = List.copyOf(called);
        }
    }

    /**
     * Nothing of it was taken.
     *
     * @param why what can't be read or has two meanings, and what to write instead
     */
    record Back(String why) implements Taken {}
}
