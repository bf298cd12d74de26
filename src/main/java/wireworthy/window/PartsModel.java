package wireworthy.window;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import wireworthy.marking.Mark;
import wireworthy.practice.Problem;
import wireworthy.rules.Ref;

/**
 * Several figures of one circuit, one after the other. Each is judged also from the learner's own
 * earlier ones.
 */
public final class PartsModel implements ExerciseModel {
    private final Problem problem;
    private final AnswerDesk desk;
    private final Consumer<String> notKept;
    private final ObservableList<FigureModel> opened = FXCollections.observableArrayList();

    /** Kept, since whoever listens to it holds on to it only weakly. */
    private final ObservableList<FigureModel> openedToRead =
            FXCollections.unmodifiableObservableList(opened);

    private final ReadOnlyObjectWrapper<FigureModel> spokenOf;

    PartsModel(final Problem problem, final AnswerDesk desk, final Consumer<String> notKept) {
        this.problem = problem;
        this.desk = desk;
        this.notKept = notKept;
        open(Map.of());
        spokenOf = new ReadOnlyObjectWrapper<>(current());
    }

    private void open(final Map<Ref, String> before) {
        final Problem part = problem.only(problem.parts().get(opened.size()));
        opened.add(new FigureModel(part, desk, before, notKept));
    }

    @Override
    public Problem exercise() {
        return problem;
    }

    /** The parts opened so far, in order; the last is being worked. */
    public ObservableList<FigureModel> opened() {
        return openedToRead;
    }

    /** The part that is being worked. */
    public FigureModel current() {
        return opened.get(opened.size() - 1);
    }

    @Override
    public Optional<FigureModel> figure() {
        return Optional.of(current());
    }

    @Override
    public boolean underWay() {
        return !last() || current().underWay();
    }

    /** The part of which there is something to say. */
    public ReadOnlyObjectProperty<FigureModel> spokenOf() {
        return spokenOf.getReadOnlyProperty();
    }

    /** Speaks of the part that is being worked. */
    public void speakOfCurrent() {
        spokenOf.set(current());
    }

    /** Marks the current part; one that is right, or follows from earlier ones, opens the next. */
    @Override
    public void answer() {
        final FigureModel answered = current();
        speakOfCurrent();
        answered.answer();
        if (holds(answered) && !last()) {
            open(figures());
        }
    }

    private static boolean holds(final FigureModel part) {
        return part.mark()
                .get()
                .filter(mark -> !mark.asksBack())
                .filter(mark -> mark.isSound() || mark.follows())
                .isPresent();
    }

    @Override
    public void takeOver(final ExerciseModel earlier) {
        if (earlier instanceof PartsModel other) {
            for (int i = 0; i < other.opened.size(); i++) {
                if (i > 0) {
                    open(figures());
                }
                current().takeOver(other.opened.get(i));
            }
            spokenOf.set(opened.get(other.opened.indexOf(other.spokenOf.get())));
        }
    }

    /** Opens the next part though this one is not sound. */
    public void goOn() {
        if (!last()) {
            open(figures());
            speakOfCurrent();
        }
    }

    /** Whether all parts have been opened. */
    public boolean last() {
        return opened.size() == problem.parts().size();
    }

    /**
     * Whether a part before this one is not sound in itself, so that its figure is gone on with.
     */
    public boolean onOwnFigures() {
        return opened.stream()
                .limit(opened.size() - 1L)
                .map(part -> part.mark().get())
                .flatMap(Optional::stream)
                .anyMatch(mark -> !mark.isSound());
    }

    /** Whether every part was answered soundly. */
    public boolean allSound() {
        return last()
                && opened.stream().allMatch(p -> p.mark().get().filter(Mark::isSound).isPresent());
    }

    private Map<Ref, String> figures() {
        final Map<Ref, String> figures = new LinkedHashMap<>();
        opened.forEach(part -> figures.put(part.exercise().asked(), part.lines().answer().left()));
        return figures;
    }
}
