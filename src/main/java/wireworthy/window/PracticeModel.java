package wireworthy.window;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import wireworthy.marking.Comparison;
import wireworthy.marking.Mark;
import wireworthy.practice.Problem;
import wireworthy.rules.Figures;
import wireworthy.rules.Reading;

/** What the Practice place shows and does, without a control. */
public final class PracticeModel {
    /** What is beside the problem. */
    public enum Beside {
        NOTHING_YET,
        LINES,
        RULE,
        SOUND,
        UNSOUND,
        /** One more line would tell which slips it was. */
        SETTLING,
        ASKED_BACK
    }

    private final Trainer trainer;
    private final ObjectProperty<Optional<String>> topic =
            new SimpleObjectProperty<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<Problem>> problem =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper why = new ReadOnlyStringWrapper("");
    private final StringProperty typed = new SimpleStringProperty("");
    private final ReadOnlyStringWrapper understood = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper notKept = new ReadOnlyStringWrapper("");
    private final ReadOnlyObjectWrapper<Optional<Mark>> mark =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Beside> beside =
            new ReadOnlyObjectWrapper<>(Beside.NOTHING_YET);
    private final ReadOnlyObjectWrapper<Optional<LinesModel>> lines =
            new ReadOnlyObjectWrapper<>(Optional.empty());

    public PracticeModel(final Trainer trainer) {
        this.trainer = trainer;
        typed.subscribe(text -> understood.set(understand(text)));
    }

    /** Draws the next problem of the topic chosen. */
    public void next() {
        trainer.next(topic.get()).ifPresent(this::show);
    }

    /** One like it, with new numbers. */
    public void twin() {
        problem.get().ifPresent(current -> show(trainer.twin(current)));
    }

    /** Shows a problem that was asked for by name. */
    public void show(final Trainer.Next next) {
        beside.set(Beside.NOTHING_YET);
        why.set(next.why());
        lines.set(Optional.empty());
        problem.set(Optional.of(next.problem()));
        typed.set("");
        mark.set(Optional.empty());
        notKept.set("");
        lines.set(Optional.of(new LinesModel(next.problem(), trainer, typed, notKept::set)));
    }

    /** Marks the answer typed. Only the first mark of a problem counts as unaided. */
    public void answer() {
        lines.get().ifPresent(now -> leave(now.answer()));
        explain();
    }

    /** Shows what there is to say of the answer. */
    public void explain() {
        beside.set(mark.get().map(this::besideFor).orElse(Beside.NOTHING_YET));
    }

    /** Marks the figure of a line, and with it the lines that were worked from it. */
    public void leave(final LineRow row) {
        lines.get()
                .filter(now -> now.rows().contains(row))
                .ifPresent(
                        now -> {
                            now.leave(row);
                            mark.set(now.answer().mark().get());
                        });
    }

    private Beside besideFor(final Mark marked) {
        if (marked.asksBack()) {
            return Beside.ASKED_BACK;
        }
        if (settlingLine().isPresent()) {
            return Beside.SETTLING;
        }
        return marked.isSound() ? Beside.SOUND : Beside.UNSOUND;
    }

    /** Shows the workings though a line would tell more; that line is then told too. */
    public void showWorkings() {
        lines.get().ifPresent(LinesModel::aidAll);
        beside.set(Beside.UNSOUND);
    }

    /** Clears the way for another try; the explanation stays until it is marked. */
    public void again() {
        lines.get().map(LinesModel::answer).ifPresent(LineRow::forget);
        typed.set("");
    }

    /** Shows the rules of the working in words; the answer counts as aided from then on. */
    public void showRule() {
        lines.get().ifPresent(LinesModel::aidAll);
        beside.set(Beside.RULE);
    }

    /** Opens the working to be filled in line by line. */
    public void lineByLine() {
        beside.set(Beside.LINES);
    }

    /** The line whose figure would settle which slips the answer came from. */
    public Optional<LineRow> settlingLine() {
        return mark.get()
                .flatMap(Mark::ask)
                .flatMap(ref -> lines.get().flatMap(l -> l.rowFor(ref)));
    }

    /** Opens the working at the line that would settle it. */
    public void askSettlingLine() {
        settlingLine()
                .ifPresent(
                        row -> {
                            lines.get().ifPresent(now -> now.ask(row));
                            lineByLine();
                        });
    }

    /** The workings to show beside the mark: side by side where a slip explains it. */
    public Comparison comparison() {
        final Problem current = problem.get().orElseThrow();
        return lines.get()
                .flatMap(now -> Comparison.told(current.worked(), now.said()))
                .or(() -> mark.get().flatMap(m -> Comparison.told(current.worked(), List.of(m))))
                .orElseGet(() -> Comparison.sound(current.worked(), current.asked()));
    }

    private String understand(final String text) {
        if (text.isBlank() || problem.get().isEmpty()) {
            return "";
        }
        final Reading reading =
                Figures.read(
                        text, problem.get().orElseThrow().asked().quantity().dimension(), false);
        if (reading instanceof Reading.Read read) {
            return "read as " + read.text();
        }
        return reading instanceof Reading.Unclear unclear
                ? unclear.question()
                : ((Reading.Unreadable) reading).message();
    }

    /** How firmly the skill of the problem holds: "drop: loose". */
    public String skillState() {
        return problem.get()
                .map(p -> p.skill().words() + ": " + trainer.state(p.skill()))
                .orElse("");
    }

    public Trainer trainer() {
        return trainer;
    }

    public ObjectProperty<Optional<String>> topic() {
        return topic;
    }

    public ReadOnlyObjectProperty<Optional<Problem>> problem() {
        return problem.getReadOnlyProperty();
    }

    public ReadOnlyStringProperty why() {
        return why.getReadOnlyProperty();
    }

    public StringProperty typed() {
        return typed;
    }

    /** How the text in the answer field is understood. */
    public ReadOnlyStringProperty understood() {
        return understood.getReadOnlyProperty();
    }

    /** Why the last answer could not be kept; empty where it was. */
    public ReadOnlyStringProperty notKept() {
        return notKept.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<Optional<Mark>> mark() {
        return mark.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<Beside> beside() {
        return beside.getReadOnlyProperty();
    }

    /** The lines of the problem; none while there is no problem. */
    public ReadOnlyObjectProperty<Optional<LinesModel>> lines() {
        return lines.getReadOnlyProperty();
    }
}
