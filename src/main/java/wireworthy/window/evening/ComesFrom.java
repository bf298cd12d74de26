package wireworthy.window.evening;

import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import wireworthy.evening.ChosenFor;
import wireworthy.evening.course.Evening;

/** Where the sheet that is being chosen comes from: an evening, a mark, or what was missed. */
final class ComesFrom {
    private final ReadOnlyObjectWrapper<Optional<Evening>> evening =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<ChosenFor> chosenFor =
            new ReadOnlyObjectWrapper<>(ChosenFor.NOTHING);
    private final ReadOnlyStringWrapper markSaid = new ReadOnlyStringWrapper("");

    /** The evening it was started from. */
    ReadOnlyObjectProperty<Optional<Evening>> evening() {
        return evening.getReadOnlyProperty();
    }

    /** What it was chosen for; nothing where the leader chose it. */
    ReadOnlyObjectProperty<ChosenFor> chosenFor() {
        return chosenFor.getReadOnlyProperty();
    }

    /** What is the matter with a mark. */
    ReadOnlyStringProperty markSaid() {
        return markSaid.getReadOnlyProperty();
    }

    /** From an evening, or from none. */
    void evening(final Optional<Evening> other) {
        chosenFor.set(ChosenFor.NOTHING);
        evening.set(other);
    }

    /** From a mark, or from what was missed; then it is that of no evening. */
    void elsewhere(final ChosenFor reason) {
        evening.set(Optional.empty());
        markSaid.set("");
        chosenFor.set(reason);
    }

    /** The leader chose other problems. */
    void chosenAnew() {
        chosenFor.set(ChosenFor.NOTHING);
    }

    /** A mark brings nothing back. */
    void noMark(final String trouble) {
        markSaid.set(trouble);
    }
}
