package wireworthy.window;

import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import wireworthy.practice.ChoiceProblem;

/** One of a few things to choose from, as it is being chosen. */
public final class ChoiceModel implements ExerciseModel {
    private final ChoiceProblem problem;
    private final Keeping keeping;
    private final ObjectProperty<Optional<ChoiceProblem.Option>> chosen =
            new SimpleObjectProperty<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<ChoiceProblem.Option>> marked =
            new ReadOnlyObjectWrapper<>(Optional.empty());

    ChoiceModel(final ChoiceProblem problem, final Keeping keeping) {
        this.problem = problem;
        this.keeping = keeping;
    }

    @Override
    public ChoiceProblem exercise() {
        return problem;
    }

    /** Marks what is chosen; nothing is done where it was marked before or nothing is chosen. */
    @Override
    public void answer() {
        chosen.get().filter(now -> !marked.get().equals(chosen.get())).ifPresent(this::mark);
    }

    @Override
    public void takeOver(final ExerciseModel earlier) {
        if (earlier instanceof ChoiceModel other) {
            chosen.set(other.chosen.get().map(it -> sameAs(it, other)));
            marked.set(other.marked.get().map(it -> sameAs(it, other)));
            keeping.takeOver(other.keeping);
        }
    }

    private ChoiceProblem.Option sameAs(
            final ChoiceProblem.Option option, final ChoiceModel other) {
        return problem.options().get(other.problem.options().indexOf(option));
    }

    private void mark(final ChoiceProblem.Option option) {
        final Optional<String> slip = option.right() ? Optional.empty() : option.slip();
        keeping.keep(Attempt.at(Optional.empty(), option.text(), option.right(), slip));
        marked.set(Optional.of(option));
    }

    /** What is chosen now. */
    public ObjectProperty<Optional<ChoiceProblem.Option>> chosen() {
        return chosen;
    }

    /** What was chosen when it was last marked. */
    public ReadOnlyObjectProperty<Optional<ChoiceProblem.Option>> marked() {
        return marked.getReadOnlyProperty();
    }
}
