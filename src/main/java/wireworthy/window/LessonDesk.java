package wireworthy.window;

import java.util.List;
import java.util.Optional;
import wireworthy.lessons.Block;
import wireworthy.rules.Skill;

/** What the lessons ask of the rest of the program, and tell it. */
public interface LessonDesk {
    /** Fetches what is on record; called once, away from the window's thread. */
    default void fetch() {}

    /** The lesson that was open last. */
    Optional<String> last();

    /** A lesson has been opened. */
    void opened(String lesson);

    /** Whether the end of a lesson has been shown before. */
    boolean hasRead(String lesson);

    /** The end of a lesson has been shown. */
    void read(String lesson);

    /** How the skills of a lesson hold, in a word such as "snug"; empty while nothing is known. */
    Optional<String> state(List<Skill> skills);

    /** The sums in use. */
    default InUse inUse() {
        return InUse.USUAL;
    }

    /** The screen, from 0, at which the lesson last open was left. */
    default int lastScreen() {
        return 0;
    }

    /** A screen of the open lesson, from 0, has come to the top. */
    default void atScreen(int number) {}

    /** The reader wants to practise these questions. */
    void practise(List<Block.Questions> questions);

    /** Asks where a lesson is to be saved. */
    FileAsking files();

    /** The reader follows a link to a table. */
    void table(String id);
}
