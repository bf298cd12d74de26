package wireworthy.window;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.StringProperty;
import wireworthy.marking.Mark;
import wireworthy.practice.Help;
import wireworthy.practice.LineState;
import wireworthy.practice.ProblemLine;
import wireworthy.rules.Ref;

/** One line of a working as the learner has it: how it stands, what is typed, what was said. */
public final class LineRow {
    private final ProblemLine line;
    private final StringProperty typed;
    private final ReadOnlyObjectWrapper<LineState> state = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyIntegerWrapper helped = new ReadOnlyIntegerWrapper();
    private final ReadOnlyObjectWrapper<Optional<Mark>> mark =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<List<Integer>> waitsFor =
            new ReadOnlyObjectWrapper<>(List.of());
    private String left = "";
    private boolean aided;
    private boolean kept;

    LineRow(final ProblemLine line, final StringProperty typed) {
        this.line = line;
        this.typed = typed;
        state.set(line.state());
    }

    public ProblemLine line() {
        return line;
    }

    public Ref ref() {
        return line.ref();
    }

    public StringProperty typed() {
        return typed;
    }

    public ReadOnlyObjectProperty<LineState> state() {
        return state.getReadOnlyProperty();
    }

    /** How many levels of help have been given. */
    public ReadOnlyIntegerProperty helped() {
        return helped.getReadOnlyProperty();
    }

    /** The help given so far, a level each. */
    public List<String> help() {
        return List.of(Help.values()).subList(0, helped.get()).stream()
                .map(level -> level.text(line))
                .toList();
    }

    /** The level of help that comes next; none after the last. */
    public Optional<Help> nextHelp() {
        final Help[] levels = Help.values();
        return helped.get() < levels.length ? Optional.of(levels[helped.get()]) : Optional.empty();
    }

    public ReadOnlyObjectProperty<Optional<Mark>> mark() {
        return mark.getReadOnlyProperty();
    }

    /** The lines that have to be answered before this one may be shown: its numbers tell theirs. */
    public ReadOnlyObjectProperty<List<Integer>> waitsFor() {
        return waitsFor.getReadOnlyProperty();
    }

    /** Whether its figure has been marked one way or the other. */
    boolean answered() {
        return mark.get().flatMap(Mark::sound).isPresent();
    }

    boolean asked() {
        return state.get() == LineState.ASKED;
    }

    /** What stood in the field when it was last left. */
    public String left() {
        return left;
    }

    /** Takes over what is typed; whether it is anything new. */
    boolean leave() {
        final boolean changed = !left.equals(typed.get().strip());
        left = typed.get().strip();
        return changed;
    }

    /** Takes a figure that was answered and kept earlier. */
    void fillIn(final String figure) {
        typed.set(figure);
        left = figure.strip();
        kept = true;
        ask();
    }

    /** Takes over how far the same line had come in another language. */
    void takeOver(final LineRow earlier) {
        typed.set(earlier.typed.get());
        left = earlier.left;
        aided = earlier.aided;
        kept = earlier.kept;
        helped.set(earlier.helped.get());
        state.set(earlier.state.get());
    }

    /** The same figure again is a new answer. */
    void forget() {
        left = "";
    }

    void ask() {
        state.set(LineState.ASKED);
    }

    void helpOn() {
        aided = true;
        helped.set(Math.min(helped.get() + 1, Help.values().length));
    }

    void aid() {
        aided = true;
    }

    boolean aided() {
        return aided || kept;
    }

    boolean kept() {
        return kept;
    }

    void keep() {
        kept = true;
    }

    void say(final Optional<Mark> said) {
        mark.set(said);
    }

    void waitFor(final List<Integer> lines) {
        waitsFor.set(lines);
    }
}
