package wireworthy.window;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import wireworthy.marking.Evidence;
import wireworthy.marking.Mark;
import wireworthy.marking.Marker;
import wireworthy.practice.Help;
import wireworthy.practice.LineByLine;
import wireworthy.practice.LineState;
import wireworthy.practice.Problem;
import wireworthy.practice.ProblemLine;
import wireworthy.rules.Ref;
import wireworthy.rules.Skill;

/** The working of one problem line by line: what is filled in, helped with, marked and kept. */
public final class LinesModel {
    private final Problem problem;
    private final Keeping keeping;
    private final Map<Ref, String> before;
    private Evidence evidence;
    private final List<LineRow> rows = new ArrayList<>();
    private final LineRow answer;
    private final LineRow main;

    /**
     * The lines of a problem.
     *
     * @param before what was answered earlier in the same circuit, as typed
     * @param typed what is typed as the answer, which is the last line
     * @param notKept is told why an answer could not be kept, or nothing where it was
     */
    LinesModel(
            final Problem problem,
            final AnswerDesk desk,
            final Map<Ref, String> before,
            final StringProperty typed,
            final Consumer<String> notKept) {
        this.problem = problem;
        this.keeping = new Keeping(problem, desk, notKept);
        this.before = Map.copyOf(before);
        this.evidence = desk.evidence();
        for (final ProblemLine line : desk.lines(problem)) {
            final boolean last = line.ref().equals(problem.asked());
            rows.add(new LineRow(line, last ? typed : new SimpleStringProperty("")));
        }
        answer = rows.get(rows.size() - 1);
        main = rows.stream().filter(row -> row.line().main()).findFirst().orElse(answer);
        before.forEach((ref, figure) -> row(ref).ifPresent(row -> row.fillIn(figure)));
        show(marks());
    }

    /** The lines in working order; the last is the answer. */
    public List<LineRow> rows() {
        return List.copyOf(rows);
    }

    /** The line that is the answer. */
    public LineRow answer() {
        return answer;
    }

    /** The line that gives a quantity, itself or under another name. */
    public Optional<LineRow> rowFor(final Ref ref) {
        return row(ref).or(() -> row(LineByLine.origin(problem.worked(), ref)));
    }

    private Optional<LineRow> row(final Ref ref) {
        return rows.stream().filter(row -> row.ref().equals(ref)).findFirst();
    }

    /** The first line that waits for a figure, the answer where none does. */
    public LineRow firstOpen() {
        return rows.stream()
                .filter(row -> row.asked() && !row.answered())
                .findFirst()
                .orElse(answer);
    }

    /** Leaves the line to the learner. What was shown of it before makes its answer aided. */
    public void ask(final LineRow row) {
        if (row.state().get() == LineState.SHOWN && row.waitsFor().get().isEmpty()) {
            row.aid();
        }
        row.ask();
        refresh();
    }

    /** Gives the next level of help. Numbers also tell the lines that they come from. */
    public void help(final LineRow row) {
        row.nextHelp()
                .filter(level -> level.compareTo(Help.NUMBERS) >= 0)
                .ifPresent(level -> below(row).forEach(LineRow::aid));
        row.helpOn();
    }

    /** From now on every answer to this problem is aided. */
    void aidAll() {
        rows.forEach(LineRow::aid);
    }

    /**
     * Marks what is filled in, each line judged also from the learner's own earlier ones, and keeps
     * the figure of this one. Nothing is done where the figure is the one left there before.
     */
    public void leave(final LineRow row) {
        if (!row.leave()) {
            return;
        }
        final Optional<LineRow> asked =
                answer.mark().get().flatMap(Mark::ask).flatMap(this::rowFor);
        final List<Mark> marks = marks();
        keep(row, marks);
        if (row != answer && asked.filter(row::equals).isPresent()) {
            keep(answer, marks);
        }
        show(marks);
    }

    /** Takes over what was typed, marked and helped with in the same lines. */
    void takeOver(final LinesModel earlier) {
        for (int i = 0; i < Math.min(rows.size(), earlier.rows.size()); i++) {
            rows.get(i).takeOver(earlier.rows.get(i));
        }
        evidence = earlier.evidence;
        keeping.takeOver(earlier.keeping);
        show(marks());
    }

    private List<Mark> marks() {
        final Map<Ref, String> filled = new LinkedHashMap<>(before);
        rows.stream()
                .filter(row -> !row.left().isEmpty())
                .forEach(row -> filled.put(row.ref(), row.left()));
        return filled.isEmpty() ? List.of() : Marker.marks(problem.worked(), filled, evidence);
    }

    private void keep(final LineRow row, final List<Mark> marks) {
        markOf(row, marks).filter(mark -> !mark.asksBack()).ifPresent(m -> keep(row, m));
    }

    private void keep(final LineRow row, final Mark mark) {
        final Skill skill = skill(row);
        final boolean aided = aided(row);
        row.keep();
        keeping.keep(Attempt.of(mark), skill, aided);
        explained(row, mark);
    }

    /**
     * What the answer says of the problem's skill counts for it, unless its line said so before.
     */
    private Skill skill(final LineRow row) {
        return standsForMain(row) ? problem.skill() : row.line().skill();
    }

    private boolean aided(final LineRow row) {
        return row.aided() || (standsForMain(row) && main.aided());
    }

    private boolean standsForMain(final LineRow row) {
        return row == answer && (main == answer || !main.kept());
    }

    /**
     * An explanation may speak of every line on the way; one that asks for a line tells nothing.
     */
    private void explained(final LineRow row, final Mark mark) {
        if (mark.ask().flatMap(this::rowFor).isPresent()) {
            row.aid();
        } else if (row == answer) {
            aidAll();
        } else if (!mark.isSound()) {
            row.aid();
            below(row).forEach(LineRow::aid);
        }
    }

    private List<LineRow> below(final LineRow row) {
        final List<LineRow> all = new ArrayList<>();
        row.line().standsOn().stream()
                .map(number -> rows.get(number - 1))
                .forEach(
                        each -> {
                            all.add(each);
                            all.addAll(below(each));
                        });
        return all;
    }

    private void show(final List<Mark> marks) {
        rows.forEach(row -> row.say(markOf(row, marks)));
        refresh();
    }

    private static Optional<Mark> markOf(final LineRow row, final List<Mark> marks) {
        return marks.stream().filter(mark -> mark.ref().equals(row.ref())).findFirst();
    }

    private void refresh() {
        rows.forEach(
                row ->
                        row.waitFor(
                                below(row).stream()
                                        .filter(each -> each.asked() && !each.answered())
                                        .map(each -> each.line().number())
                                        .distinct()
                                        .sorted()
                                        .toList()));
    }

    /** The marks so far in working order, the answer's last. */
    public List<Mark> said() {
        return rows.stream().map(row -> row.mark().get()).flatMap(Optional::stream).toList();
    }
}
