package wireworthy.window;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import wireworthy.lessons.Block;
import wireworthy.lessons.LessonHeading;
import wireworthy.practice.Exercise;
import wireworthy.record.DataFolder;
import wireworthy.record.SettingsKeeper;
import wireworthy.rules.Skill;
import wireworthy.window.check.CheckPlace;
import wireworthy.window.evening.EveningDesk;
import wireworthy.window.evening.EveningPlace;
import wireworthy.window.evening.ProjectorDesk;
import wireworthy.window.stand.SkillCard;
import wireworthy.window.stand.StandTexts;

/** The places in the order of the strip, and the ways from one to another. */
final class Places {
    private final OnFirstVisit<TablesPlace> tables;
    private final Learner learner;
    private final PracticeModel model;
    private final OnFirstVisit<PracticePlace> practice;
    private final LessonsPlace lessons;
    private final OnFirstVisit<CheckPlace> check;
    private final OnFirstVisit<EveningPlace> evening;
    private final Place stand;
    private final Place people;
    private final Ahead ahead;
    private final FileAsking files;
    private Consumer<String> going = place -> {};

    Places(
            final DataFolder folder,
            final SettingsKeeper settings,
            final Clock clock,
            final Ahead ahead) {
        files = FileAsking.bySystem(LastFolder.keptIn(folder.written(), home()));
        final InUse inUse = new SumsFromSettings(settings, () -> going.accept(SumsPlace.ID));
        tables =
                new OnFirstVisit<>(
                        TablesPlace.ID, WindowTexts.of("tables"), () -> new TablesPlace(inUse));
        learner =
                new Learner(
                        new OwnRecord(folder.answers(), clock, settings.now().person()),
                        ahead.solver(),
                        Content.of(folder.problemBanks(), ahead::lessons, inUse));
        model = new PracticeModel(learner, new SettingsBookmark(settings));
        practice =
                new OnFirstVisit<>(
                        PracticePlace.ID,
                        PracticeTexts.of("title"),
                        () -> new PracticePlace(model, this::toLesson, inUse));
        check =
                new OnFirstVisit<>(
                        CheckPlace.ID,
                        CheckPlace.name(),
                        () -> new CheckPlace(folder.vehicles(), inUse::sums));
        evening =
                new OnFirstVisit<>(
                        EveningPlace.ID,
                        EveningPlace.name(),
                        () -> evening(folder, settings, clock, inUse));
        lessons =
                new LessonsPlace(
                        ahead::lessons,
                        ahead.solver(),
                        new LearnersDesk(
                                learner, settings, inUse, this::toPractice, this::toTable, files));
        stand =
                new OnFirstVisit<>(
                        StandPlace.ID,
                        StandTexts.of("title"),
                        () ->
                                new StandPlace(
                                        learner.stand()::whole,
                                        new SkillCard.Ways(
                                                this::practise, this::lesson, this::toLesson)));
        people =
                new OnFirstVisit<>(
                        PeoplePlace.ID,
                        PeopleTexts.of("title"),
                        () ->
                                new PeoplePlace(
                                        new PeopleModel(learner.record(), settings, model::leave),
                                        files));
        this.ahead = ahead;
    }

    private static Path home() {
        return Path.of(System.getProperty("user.home", "."));
    }

    private EveningPlace evening(
            final DataFolder folder,
            final SettingsKeeper settings,
            final Clock clock,
            final InUse inUse) {
        return EveningPlace.of(
                new EveningDesk(folder, clock, files, ahead::lessons, this::toLesson),
                new ProjectorDesk(ahead.solver(), inUse::sums),
                settings);
    }

    /** Writes what is not written yet. */
    void close() {
        check.ifMade(CheckPlace::close);
    }

    /** Goes on where the places of a window in another language were left. */
    void takeOver(final Places earlier) {
        learner.takeOver(earlier.learner);
        model.takeOver(earlier.model);
    }

    /** All of them, in order. */
    List<Place> all() {
        return List.of(lessons, practice, check, evening, tables);
    }

    /** The pages to which no terminal belongs, in the order of the menu. */
    List<Place> pages() {
        return List.of(stand, people);
    }

    /** Says how one goes to another place. */
    void goBy(final Consumer<String> way) {
        going = way;
    }

    private void toLesson(final Exercise exercise) {
        toLesson(exercise.template().bank());
    }

    private void toLesson(final LessonHeading lesson) {
        toLesson(lesson.id());
    }

    private void toLesson(final String id) {
        going.accept(lessons.id());
        lessons.open(id);
    }

    /** The first lesson that teaches a skill. */
    private Optional<LessonHeading> lesson(final Skill skill) {
        return ahead.lessons().contents().stream()
                .filter(heading -> heading.skills().contains(skill))
                .findFirst();
    }

    private void practise(final Skill skill) {
        model.beginWith(() -> model.practise(skill));
        going.accept(practice.id());
    }

    private void toPractice(final List<Block.Questions> questions) {
        model.beginWith(
                () -> {
                    learner.want(questions);
                    model.next();
                });
        going.accept(practice.id());
    }

    private void toTable(final String id) {
        going.accept(tables.id());
        tables.place().open(id);
    }
}
