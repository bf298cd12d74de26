package wireworthy.window;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import wireworthy.lessons.Block;
import wireworthy.record.SettingsKeeper;
import wireworthy.rules.Skill;

/** What the lessons ask, answered from the learner's record and the settings. */
final class LearnersDesk implements LessonDesk {
    private final Learner learner;
    private final SettingsKeeper settings;
    private final InUse inUse;
    private final Consumer<List<Block.Questions>> practice;
    private final Consumer<String> tables;
    private final FileAsking files;

    LearnersDesk(
            final Learner learner,
            final SettingsKeeper settings,
            final InUse inUse,
            final Consumer<List<Block.Questions>> practice,
            final Consumer<String> tables,
            final FileAsking files) {
        this.learner = learner;
        this.settings = settings;
        this.inUse = inUse;
        this.practice = practice;
        this.tables = tables;
        this.files = files;
    }

    @Override
    public FileAsking files() {
        return files;
    }

    @Override
    public void fetch() {
        learner.record().fetch();
    }

    @Override
    public Optional<String> last() {
        return Optional.of(settings.now().leftOff().lesson()).filter(id -> !id.isEmpty());
    }

    @Override
    public void opened(final String lesson) {
        if (!settings.now().leftOff().lesson().equals(lesson)) {
            settings.change(it -> it.withLeftOff(at -> at.withLesson(lesson)));
        }
    }

    @Override
    public int lastScreen() {
        return settings.now().leftOff().screen();
    }

    @Override
    public void atScreen(final int number) {
        settings.change(it -> it.withLeftOff(at -> at.withScreen(number)));
    }

    @Override
    public InUse inUse() {
        return inUse;
    }

    @Override
    public boolean hasRead(final String lesson) {
        return learner.record().hasRead(lesson);
    }

    @Override
    public void read(final String lesson) {
        learner.record().read(lesson);
    }

    @Override
    public Optional<String> state(final List<Skill> skills) {
        return learner.stand().state(skills);
    }

    @Override
    public void practise(final List<Block.Questions> questions) {
        practice.accept(questions);
    }

    @Override
    public void table(final String id) {
        tables.accept(id);
    }
}
