package wireworthy.window;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import wireworthy.lessons.Block;
import wireworthy.rules.Skill;

/** A desk that remembers until the program is closed. */
final class ThisSitting implements LessonDesk {
    private final Consumer<Block.Questions> practice;
    private final Consumer<String> tables;
    private final Set<String> read = new HashSet<>();
    private Optional<String> last = Optional.empty();

    ThisSitting(final Consumer<Block.Questions> practice, final Consumer<String> tables) {
        this.practice = practice;
        this.tables = tables;
    }

    @Override
    public Optional<String> last() {
        return last;
    }

    @Override
    public void opened(final String lesson) {
        last = Optional.of(lesson);
    }

    @Override
    public boolean hasRead(final String lesson) {
        return read.contains(lesson);
    }

    @Override
    public void read(final String lesson) {
        read.add(lesson);
    }

    @Override
    public Optional<String> state(final List<Skill> skills) {
        return Optional.empty();
    }

    @Override
    public void practise(final Block.Questions questions) {
        practice.accept(questions);
    }

    @Override
    public void table(final String id) {
        tables.accept(id);
    }
}
