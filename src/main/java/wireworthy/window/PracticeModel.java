package wireworthy.window;

import java.time.Duration;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import wireworthy.practice.Exercise;
import wireworthy.rules.Skill;
import wireworthy.window.stand.StandTexts;

/** What the Practice place shows and does, without a control. */
public final class PracticeModel {
    private final Trainer trainer;
    private final Bookmark bookmark;
    private final ReadOnlyObjectWrapper<Optional<String>> topic =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<ExerciseModel>> doing =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper why = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper notKept = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper mayEnd = new ReadOnlyStringWrapper("");
    private Optional<String> chosen = Optional.empty();
    private Optional<Runnable> beginning = Optional.empty();

    public PracticeModel(final Trainer trainer) {
        this(trainer, Bookmark.NONE);
    }

    /**
     * @param bookmark where practice was left, and will be
     */
    PracticeModel(final Trainer trainer, final Bookmark bookmark) {
        this.trainer = trainer;
        this.bookmark = bookmark;
    }

    /**
     * Says with what practice begins instead of what was left: a skill or the questions of a
     * lesson. Until {@link #begin} the record may still be being read.
     */
    public void beginWith(final Runnable first) {
        beginning = Optional.of(first);
    }

    /** Begins with what was wanted, else with what was left; what is being done is gone on with. */
    public void begin() {
        final Optional<Runnable> first = beginning;
        beginning = Optional.empty();
        if (first.isPresent()) {
            first.get().run();
        } else if (doing.get().isEmpty()) {
            resume();
        }
    }

    /** Goes on with the topic and the exercise that were left. */
    public void resume() {
        chosen =
                trainer.topics().stream()
                        .map(Trainer.Topic::id)
                        .filter(bookmark.topic()::equals)
                        .findFirst();
        final String left = bookmark.problem();
        trainer.again(left).ifPresentOrElse(this::show, () -> insteadOf(left));
    }

    private void insteadOf(final String left) {
        final Optional<String> whyNot = trainer.whyNot(left);
        trainer.next(chosen)
                .map(next -> whyNot.map(next::after).orElse(next))
                .ifPresent(this::show);
    }

    /** Goes on with the exercise that was being done in a window in another language. */
    void takeOver(final PracticeModel earlier) {
        earlier.doing.get().ifPresent(before -> takeOver(before, earlier));
    }

    private void takeOver(final ExerciseModel before, final PracticeModel earlier) {
        chosen = earlier.chosen;
        trainer.same(before.exercise())
                .ifPresent(
                        next -> {
                            show(
                                    new Trainer.Next(
                                            next.exercise(), next.why(), earlier.topic.get()));
                            doing.get().ifPresent(now -> now.takeOver(before));
                        });
    }

    /** Practises a topic, or all, from now on; what a lesson still wanted to ask is left. */
    public void choose(final Optional<String> other) {
        chosen = other;
        trainer.leaveLesson();
        next();
    }

    /** Practises a skill that was chosen, once; after it the program chooses again. */
    public void practise(final Skill skill) {
        chosen = Optional.empty();
        trainer.leaveLesson();
        trainer.of(skill).ifPresent(this::show);
    }

    /** Leaves everything, since someone else learns from now on. */
    public void leave() {
        trainer.leaveLesson();
        bookmark.put("", "");
        doing.set(Optional.empty());
    }

    /** Draws the next exercise of the topic chosen. */
    public void next() {
        trainer.next(chosen).ifPresent(this::show);
    }

    /** Leaves the exercise unanswered and goes on to another. */
    public void passBy() {
        exercise().ifPresent(trainer::passBy);
        next();
    }

    /** One like it, with new numbers. */
    public void twin() {
        exercise().ifPresent(current -> show(trainer.twin(current)));
    }

    /** Shows an exercise. */
    public void show(final Trainer.Next next) {
        why.set(next.why());
        notKept.set("");
        mayEnd.set("");
        topic.set(next.topic().or(() -> chosen));
        bookmark.put(chosen.orElse(""), ExerciseName.of(next.exercise()).word());
        doing.set(Optional.of(ExerciseModel.of(next.exercise(), trainer, this::kept)));
    }

    private void kept(final String trouble) {
        notKept.set(trouble);
        mayEnd.set(endNow().map(PracticeModel::goodMoment).orElse(""));
    }

    /** In the middle of a working is no moment to stop. */
    private Optional<Duration> endNow() {
        return doing.get().filter(it -> !it.underWay()).flatMap(it -> trainer.mayEnd());
    }

    private static String goodMoment(final Duration lasted) {
        return StandTexts.of("may-end", "minutes", lasted.toMinutes());
    }

    /** Marks what was answered. */
    public void answer() {
        doing.get().ifPresent(ExerciseModel::answer);
    }

    /** How firmly the skill of the exercise holds: "drop: loose". */
    public String skillState() {
        return exercise()
                .map(it -> it.skill().words() + ": " + trainer.state(it.skill()))
                .orElse("");
    }

    public Trainer trainer() {
        return trainer;
    }

    /** The topic that is practised; empty where all are. */
    public ReadOnlyObjectProperty<Optional<String>> topic() {
        return topic.getReadOnlyProperty();
    }

    /** What is to be done now. */
    public Optional<Exercise> exercise() {
        return doing.get().map(ExerciseModel::exercise);
    }

    /** What is to be done, and how far it is; none where no bank could be read. */
    public ReadOnlyObjectProperty<Optional<ExerciseModel>> doing() {
        return doing.getReadOnlyProperty();
    }

    /** The figure that is worked now; empty where the exercise has none. */
    public Optional<FigureModel> figure() {
        return doing.get().flatMap(ExerciseModel::figure);
    }

    public ReadOnlyStringProperty why() {
        return why.getReadOnlyProperty();
    }

    /** That now is a good moment to stop; empty where it is not. */
    public ReadOnlyStringProperty mayEnd() {
        return mayEnd.getReadOnlyProperty();
    }

    /** Why the last answer could not be kept; empty where it was. */
    public ReadOnlyStringProperty notKept() {
        return notKept.getReadOnlyProperty();
    }
}
