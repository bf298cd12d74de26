package wireworthy.window;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.scene.Node;
import wireworthy.lessons.Block;
import wireworthy.rules.Skill;

/** A desk that keeps what it is told. */
final class TestDesk implements LessonDesk {
    final Set<String> read = new HashSet<>();
    final List<Block.Questions> practised = new ArrayList<>();
    final List<String> tables = new ArrayList<>();
    Optional<String> last = Optional.empty();
    Optional<Path> saveTo = Optional.empty();

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
        return skills.contains(Skill.ADDING_LOADS) ? Optional.of("snug") : Optional.empty();
    }

    @Override
    public void practise(final List<Block.Questions> questions) {
        practised.addAll(questions);
    }

    @Override
    public void table(final String id) {
        tables.add(id);
    }

    @Override
    public FileAsking files() {
        return new FileAsking() {
            @Override
            public Optional<Path> open(final Node from, final String title, final String ending) {
                return Optional.empty();
            }

            @Override
            public Optional<Path> save(
                    final Node from, final String title, final String name, final String ending) {
                return saveTo;
            }

            @Override
            public Optional<Path> folder(final Node from, final String title) {
                return Optional.empty();
            }

            @Override
            public Optional<Path> folderToRead(final Node from, final String title) {
                return Optional.empty();
            }
        };
    }
}
