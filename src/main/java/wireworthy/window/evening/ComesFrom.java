package wireworthy.window.evening;

import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import wireworthy.evening.course.Evening;

/** Where the sheet that is being chosen comes from: an evening, a mark, or what was missed. */
final class ComesFrom {
    private final ReadOnlyObjectWrapper<Optional<Evening>> evening =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper why = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper markSaid = new ReadOnlyStringWrapper("");

    /** The evening it was started from. */
    ReadOnlyObjectProperty<Optional<Evening>> evening() {
        return evening.getReadOnlyProperty();
    }

    /** What it was chosen by, in words; empty where the leader chose it. */
    ReadOnlyStringProperty why() {
        return why.getReadOnlyProperty();
    }

    /** What is the matter with a mark. */
    ReadOnlyStringProperty markSaid() {
        return markSaid.getReadOnlyProperty();
    }

    /** From an evening, or from none. */
    void evening(final Optional<Evening> other) {
        why.set("");
        evening.set(other);
    }

    /** From a mark, or from what was missed; then it is that of no evening. */
    void elsewhere(final String reason) {
        evening.set(Optional.empty());
        markSaid.set("");
        why.set(reason);
    }

    /** The leader chose other problems. */
    void chosenAnew() {
        why.set("");
    }

    /** A mark brings nothing back. */
    void noMark(final String trouble) {
        markSaid.set(trouble);
    }
}
