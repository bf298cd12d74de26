package wireworthy.window;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.StringProperty;
import wireworthy.marking.Comparison;
import wireworthy.marking.Mark;
import wireworthy.practice.Problem;
import wireworthy.rules.Ref;

/** One figure to be worked, answered at once or line by line. */
public final class FigureModel implements ExerciseModel {
    private final Problem problem;
    private final LinesModel lines;
    private final TypedFigure typed;
    private final ReadOnlyObjectWrapper<Optional<Mark>> mark =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Beside> beside =
            new ReadOnlyObjectWrapper<>(Beside.NOTHING_YET);
    private final ReadOnlyBooleanWrapper rule = new ReadOnlyBooleanWrapper();

    /**
     * A figure not yet answered.
     *
     * @param before what was answered earlier in the same circuit, as typed
     * @param notKept is told why an answer could not be kept, or nothing where it was
     */
    FigureModel(
            final Problem problem,
            final AnswerDesk desk,
            final Map<Ref, String> before,
            final Consumer<String> notKept) {
        this.problem = problem;
        typed = new TypedFigure(problem.asked().quantity());
        lines = new LinesModel(problem, desk, before, typed.text(), notKept);
    }

    @Override
    public Problem exercise() {
        return problem;
    }

    @Override
    public Optional<FigureModel> figure() {
        return Optional.of(this);
    }

    @Override
    public boolean underWay() {
        return !lines.answer().kept();
    }

    /** Marks the answer typed. */
    @Override
    public void answer() {
        leave(lines.answer());
        explain();
    }

    /** Shows what there is to say of the answer. */
    public void explain() {
        beside.set(mark.get().map(this::besideFor).orElse(Beside.NOTHING_YET));
    }

    /** Marks the figure of a line, and with it the lines that were worked from it. */
    public void leave(final LineRow row) {
        if (lines.rows().contains(row)) {
            lines.leave(row);
            mark.set(lines.answer().mark().get());
        }
    }

    @Override
    public void takeOver(final ExerciseModel earlier) {
        if (earlier instanceof FigureModel other) {
            lines.takeOver(other.lines);
            mark.set(lines.answer().mark().get());
            beside.set(other.beside.get());
            rule.set(other.rule.get());
        }
    }

    private Beside besideFor(final Mark marked) {
        if (marked.asksBack()) {
            return Beside.ASKED_BACK;
        }
        return settlingLine().isPresent() ? Beside.SETTLING : Beside.MARKED;
    }

    /** Shows the workings though a line would tell more; that line is then told too. */
    public void showWorkings() {
        lines.aidAll();
        beside.set(Beside.MARKED);
    }

    /** Clears the way for another try; the explanation stays until it is marked. */
    public void again() {
        lines.answer().forget();
        typed.text().set("");
    }

    /** Shows the rules of the working in words; the answer counts as aided from then on. */
    public void showRule() {
        lines.aidAll();
        rule.set(true);
    }

    /** Whether the rules of the working are shown beside what else there is to say. */
    public ReadOnlyBooleanProperty rule() {
        return rule.getReadOnlyProperty();
    }

    /** Opens the working to be filled in line by line. */
    public void lineByLine() {
        beside.set(Beside.LINES);
    }

    /** The line whose figure would settle which slips the answer came from. */
    public Optional<LineRow> settlingLine() {
        return mark.get().flatMap(Mark::ask).flatMap(lines::rowFor);
    }

    /** Opens the working at the line that would settle it. */
    public void askSettlingLine() {
        settlingLine()
                .ifPresent(
                        row -> {
                            lines.ask(row);
                            lineByLine();
                        });
    }

    /** The workings to show beside the mark: side by side where a slip explains it. */
    public Comparison comparison() {
        return Comparison.told(problem.worked(), lines.said())
                .or(() -> mark.get().flatMap(m -> Comparison.told(problem.worked(), List.of(m))))
                .orElseGet(() -> Comparison.sound(problem.worked(), problem.asked()));
    }

    /** The figure that is the answer. */
    public TypedFigure field() {
        return typed;
    }

    /** What is typed as the answer. */
    public StringProperty typed() {
        return typed.text();
    }

    /** How the text in the answer field is understood. */
    public ReadOnlyStringProperty understood() {
        return typed.understood();
    }

    public ReadOnlyObjectProperty<Optional<Mark>> mark() {
        return mark.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<Beside> beside() {
        return beside.getReadOnlyProperty();
    }

    /** The lines of the working. */
    public LinesModel lines() {
        return lines;
    }
}
