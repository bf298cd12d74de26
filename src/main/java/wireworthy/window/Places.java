package wireworthy.window;

import java.time.Clock;
import java.util.List;
import java.util.function.Consumer;
import wireworthy.lessons.Block;
import wireworthy.practice.Exercise;
import wireworthy.record.DataFolder;
import wireworthy.record.SettingsKeeper;
import wireworthy.window.check.CheckPlace;

/** The places in the order of the strip, and the ways from one to another. */
final class Places {
    private final OnFirstVisit<TablesPlace> tables;
    private final Learner learner;
    private final PracticeModel model;
    private final OnFirstVisit<PracticePlace> practice;
    private final LessonsPlace lessons;
    private final OnFirstVisit<CheckPlace> check;
    private Consumer<String> going = place -> {};

    Places(
            final DataFolder folder,
            final SettingsKeeper settings,
            final Clock clock,
            final Ahead ahead) {
        final InUse inUse = new SumsFromSettings(settings, () -> going.accept(SumsPlace.ID));
        tables =
                new OnFirstVisit<>(TablesPlace.ID, TablesPlace.TITLE, () -> new TablesPlace(inUse));
        learner =
                new Learner(
                        folder.answers(),
                        ahead.solver(),
                        clock,
                        Content.of(folder.problemBanks(), ahead::lessons, inUse));
        model = new PracticeModel(learner, new SettingsBookmark(settings));
        practice =
                new OnFirstVisit<>(
                        PracticePlace.ID,
                        PracticePlace.TITLE,
                        () -> new PracticePlace(model, this::toLesson, inUse));
        check =
                new OnFirstVisit<>(
                        CheckPlace.ID,
                        CheckPlace.TITLE,
                        () -> new CheckPlace(folder.vehicles(), inUse::sums));
        lessons =
                new LessonsPlace(
                        ahead::lessons,
                        ahead.solver(),
                        new LearnersDesk(
                                learner, settings, inUse, this::toPractice, this::toTable));
    }

    /** Writes what is not written yet. */
    void close() {
        check.ifMade(CheckPlace::close);
    }

    /** All of them, in order. */
    List<Place> all() {
        return List.of(lessons, practice, check, tables);
    }

    /** Says how one goes to another place. */
    void goBy(final Consumer<String> way) {
        going = way;
    }

    private void toLesson(final Exercise exercise) {
        going.accept(lessons.id());
        lessons.open(exercise.template().bank());
    }

    private void toPractice(final Block.Questions questions) {
        learner.want(questions.bank(), questions.templates());
        model.next();
        going.accept(practice.id());
    }

    private void toTable(final String id) {
        going.accept(tables.id());
        tables.place().open(id);
    }
}
