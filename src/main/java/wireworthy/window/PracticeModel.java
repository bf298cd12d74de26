package wireworthy.window;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
import wireworthy.marking.Marker;
import wireworthy.practice.Problem;
import wireworthy.rules.Direction;
import wireworthy.rules.Figures;
import wireworthy.rules.Reading;
import wireworthy.rules.Ref;
import wireworthy.working.Step;

/** What the Practice place shows and does, without a control. */
public final class PracticeModel {
    /** What is beside the problem. */
    public enum Beside {
        NOTHING_YET,
        LINES,
        RULE,
        SOUND,
        UNSOUND,
        ASKED_BACK
    }

    /** One line of the working to fill in. */
    public static final class LineToFill {
        private final Ref ref;
        private final String name;
        private final StringProperty typed = new SimpleStringProperty("");
        private final ReadOnlyObjectWrapper<Optional<Mark>> mark =
                new ReadOnlyObjectWrapper<>(Optional.empty());

        private LineToFill(final Ref ref, final String name) {
            this.ref = ref;
            this.name = name;
        }

        /** What the line gives, in words. */
        public String name() {
            return name;
        }

        public StringProperty typed() {
            return typed;
        }

        public ReadOnlyObjectProperty<Optional<Mark>> mark() {
            return mark.getReadOnlyProperty();
        }
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
    private final List<LineToFill> lines = new ArrayList<>();
    private boolean aided;
    private boolean kept;
    private long since = System.nanoTime();

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
        problem.set(Optional.of(next.problem()));
        typed.set("");
        mark.set(Optional.empty());
        lines.clear();
        aided = false;
        kept = false;
        notKept.set("");
        since = System.nanoTime();
    }

    /** Marks the answer typed. Only the first mark of a problem counts as unaided. */
    public void answer() {
        if (problem.get().isEmpty() || typed.get().isBlank()) {
            beside.set(Beside.NOTHING_YET);
            mark.set(Optional.empty());
            return;
        }
        final Problem current = problem.get().orElseThrow();
        final Mark marked = Marker.mark(current.worked(), current.asked(), typed.get());
        mark.set(Optional.of(marked));
        if (!marked.asksBack()) {
            keep(current, marked);
        }
        beside.set(besideFor(marked));
    }

    private static Beside besideFor(final Mark marked) {
        if (marked.asksBack()) {
            return Beside.ASKED_BACK;
        }
        return marked.isSound() ? Beside.SOUND : Beside.UNSOUND;
    }

    private void keep(final Problem current, final Mark marked) {
        final double seconds = (System.nanoTime() - since) / 1e9;
        notKept.set(trainer.keep(current, marked, aided || kept, seconds).orElse(""));
        kept = true;
    }

    /** Clears the way for another try; the explanation stays until it is marked. */
    public void again() {
        aided = true;
        typed.set("");
    }

    /** Shows the rules of the working in words; the answer counts as aided from then on. */
    public void showRule() {
        aided = true;
        beside.set(Beside.RULE);
    }

    /** Opens the working to be filled in line by line. */
    public void lineByLine() {
        if (lines.isEmpty() && problem.get().isPresent()) {
            final Problem current = problem.get().orElseThrow();
            current.worked().wayTo(current.asked()).stream()
                    .filter(step -> asksFor(step, current.asked()))
                    .map(step -> toFill(current, step))
                    .forEach(lines::add);
        }
        beside.set(Beside.LINES);
    }

    private static boolean asksFor(final Step step, final Ref asked) {
        return step.direction().reading() != Direction.Reading.CARRIED
                && !step.direction().output().equals(asked);
    }

    private static LineToFill toFill(final Problem current, final Step step) {
        final Ref ref = step.direction().output();
        final String subject = current.question().subject(ref);
        final String words = ref.quantity().words();
        return new LineToFill(ref, subject.isEmpty() ? words : words + ", " + subject);
    }

    /** Marks what is filled in, each line judged also from the learner's own earlier ones. */
    public void lineLeft() {
        final Map<Ref, String> filled = new LinkedHashMap<>();
        lines.stream()
                .filter(line -> !line.typed.get().isBlank())
                .forEach(line -> filled.put(line.ref, line.typed.get()));
        final List<Mark> marks =
                filled.isEmpty()
                        ? List.of()
                        : Marker.marks(problem.get().orElseThrow().worked(), filled);
        for (final LineToFill line : lines) {
            line.mark.set(marks.stream().filter(m -> m.ref().equals(line.ref)).findFirst());
        }
    }

    /** The workings to show beside the mark: side by side where a slip explains it. */
    public Comparison comparison() {
        final Problem current = problem.get().orElseThrow();
        return mark.get()
                .filter(m -> !m.explained().isEmpty())
                .map(m -> Comparison.of(current.worked(), m.ref(), m.explained().get(0)))
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

    public List<LineToFill> lines() {
        return List.copyOf(lines);
    }
}
