package wireworthy.window.evening;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import wireworthy.evening.called.Asking;
import wireworthy.evening.called.Called;
import wireworthy.evening.called.CalledGroup;
import wireworthy.evening.called.Counted;
import wireworthy.evening.called.Taken;
import wireworthy.evening.called.WallLine;
import wireworthy.practice.Exercise;

/** One question on the wall: how much of its way is shown, and what was called out. */
final class ProjectorTask {
    private final String title;
    private final Exercise exercise;
    private final Asking asking;
    private final List<WallLine> lines;
    private final StringProperty typed = new SimpleStringProperty("");
    private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper("");
    private final ReadOnlyIntegerWrapper shown = new ReadOnlyIntegerWrapper();
    private final ReadOnlyBooleanWrapper told;
    private final ReadOnlyObjectWrapper<List<Called>> called =
            new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<Optional<CalledGroup>> opened =
            new ReadOnlyObjectWrapper<>(Optional.empty());

    /**
     * @param title which problem of how many
     * @param toldAtOnce whether it is said at once where an answer comes from
     */
    ProjectorTask(
            final String title,
            final Exercise exercise,
            final Asking asking,
            final boolean toldAtOnce) {
        this.title = title;
        this.exercise = exercise;
        this.asking = asking;
        lines = asking.lines();
        told = new ReadOnlyBooleanWrapper(toldAtOnce);
    }

    String title() {
        return title;
    }

    Exercise exercise() {
        return exercise;
    }

    Asking asking() {
        return asking;
    }

    /** The whole way, the answer last. */
    List<WallLine> lines() {
        return lines;
    }

    /** How many lines of it are shown. */
    ReadOnlyIntegerProperty shown() {
        return shown.getReadOnlyProperty();
    }

    /** Shows the next line, where there is one. */
    void reveal() {
        opened.set(Optional.empty());
        shown.set(Math.min(lines.size(), shown.get() + 1));
    }

    /** Takes the last line away again. */
    void conceal() {
        opened.set(Optional.empty());
        shown.set(Math.max(0, shown.get() - 1));
    }

    /** What stands in the field. */
    StringProperty typed() {
        return typed;
    }

    /** Why nothing of it was taken; empty where it was. */
    ReadOnlyStringProperty said() {
        return said.getReadOnlyProperty();
    }

    /** Takes down what stands in the field, all of it or nothing. */
    void take() {
        final Taken taken = asking.take(typed.get());
        if (taken instanceof Taken.Answers answers) {
            called.set(Stream.concat(called.get().stream(), answers.called().stream()).toList());
            typed.set("");
            said.set("");
        } else if (taken instanceof Taken.Back back) {
            said.set(
                    typed.get().isBlank()
                            ? back.why()
                            : ProjectorTexts.of("refused", "why", Sentence.of(back.why())));
        }
    }

    /** Leaves what stands in the field untaken. */
    void clear() {
        typed.set("");
        said.set("");
    }

    /** Strikes out what was taken down last. */
    void undo() {
        final List<Called> all = called.get();
        if (!all.isEmpty()) {
            opened.set(Optional.empty());
            called.set(all.subList(0, all.size() - 1));
        }
    }

    /** What was called out, in order. */
    ReadOnlyObjectProperty<List<Called>> called() {
        return called.getReadOnlyProperty();
    }

    /** The same, equal answers together and nothing said of where they come from. */
    List<Counted> counted() {
        return Counted.of(called.get());
    }

    /** The same, sorted by where they come from. */
    List<CalledGroup> groups() {
        return CalledGroup.of(called.get());
    }

    /** Whether it is said where answers come from. */
    ReadOnlyBooleanProperty told() {
        return told.getReadOnlyProperty();
    }

    /** Says where answers come from, or keeps it back again. */
    void tell() {
        opened.set(Optional.empty());
        told.set(!told.get());
    }

    /** The group whose way is shown beside the sound one. */
    ReadOnlyObjectProperty<Optional<CalledGroup>> opened() {
        return opened.getReadOnlyProperty();
    }

    void open(final CalledGroup group) {
        opened.set(Optional.of(group));
    }

    void close() {
        opened.set(Optional.empty());
    }
}
