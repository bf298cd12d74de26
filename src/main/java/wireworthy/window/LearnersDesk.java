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
    private final Consumer<Block.Questions> practice;
    private final Consumer<String> tables;

    LearnersDesk(
            final Learner learner,
            final SettingsKeeper settings,
            final Consumer<Block.Questions> practice,
            final Consumer<String> tables) {
        this.learner = learner;
        this.settings = settings;
        this.practice = practice;
        this.tables = tables;
    }

    @Override
    public void fetch() {
        learner.record().fetch();
    }

    @Override
    public Optional<String> last() {
        return Optional.of(settings.now().lesson()).filter(id -> !id.isEmpty());
    }

    @Override
    public void opened(final String lesson) {
        if (!settings.now().lesson().equals(lesson)) {
            settings.change(it -> it.withLesson(lesson));
        }
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
        return learner.state(skills);
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
