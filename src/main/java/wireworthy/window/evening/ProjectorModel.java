package wireworthy.window.evening;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import wireworthy.evening.Sheet;
import wireworthy.evening.called.Asking;
import wireworthy.practice.Exercise;
import wireworthy.window.Background;

/**
 * The problems of a sheet on the wall, one at a time. What was called out and shown of one is there
 * again when the leader comes back to it.
 */
final class ProjectorModel {
    private final Sheet sheet;
    private final boolean toldAtOnce;
    private final Background background;
    private final Map<Integer, List<ProjectorTask>> tasks = new HashMap<>();
    private final ReadOnlyObjectWrapper<Optional<ProjectorTask>> task =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private int problem;
    private int part;

    /**
     * @param toldAtOnce whether it is said at once where an answer comes from
     * @param background draws numbers
     */
    ProjectorModel(final Sheet sheet, final boolean toldAtOnce, final Background background) {
        this.sheet = sheet;
        this.toldAtOnce = toldAtOnce;
        this.background = background;
    }

    /** Whose numbers are shown: where each has own ones, those of nobody. */
    int learner() {
        return sheet.plan().ownNumbers() ? sheet.learners() + 1 : 1;
    }

    /** What is on the wall; empty until its numbers are drawn. */
    ReadOnlyObjectProperty<Optional<ProjectorTask>> task() {
        return task.getReadOnlyProperty();
    }

    /** Shows a problem, counted from 1. */
    void show(final int number) {
        show(number, false);
    }

    private void show(final int number, final boolean lastPart) {
        background.run(
                () -> tasks.containsKey(number) ? tasks.get(number) : tasks(number),
                drawn -> {
                    tasks.put(number, drawn);
                    problem = number;
                    part = lastPart ? drawn.size() - 1 : 0;
                    task.set(Optional.of(drawn.get(part)));
                });
    }

    private List<ProjectorTask> tasks(final int number) {
        final Exercise exercise = sheet.exercise(learner(), number);
        final List<Asking> asked = Asking.of(exercise);
        final List<ProjectorTask> all = new ArrayList<>();
        for (int i = 0; i < asked.size(); i++) {
            all.add(
                    new ProjectorTask(
                            title(number, i, asked.size()), exercise, asked.get(i), toldAtOnce));
        }
        return List.copyOf(all);
    }

    private String title(final int number, final int at, final int parts) {
        final String which = ProjectorTexts.of("problem", "number", number, "of", sheet.problems());
        return parts == 1
                ? which
                : which + ProjectorTexts.of("part", "part", (char) ('a' + at), "of", parts);
    }

    /** Whether anything comes after what is shown. */
    boolean hasNext() {
        return problem < sheet.problems() || part < parts() - 1;
    }

    /** Whether anything comes before what is shown. */
    boolean hasPrevious() {
        return problem > 1 || part > 0;
    }

    private int parts() {
        return tasks.getOrDefault(problem, List.of()).size();
    }

    /** The next question: the next part of a whole circuit, or the next problem. */
    void next() {
        if (part < parts() - 1) {
            part(part + 1);
        } else if (hasNext()) {
            show(problem + 1, false);
        }
    }

    /** The question before. */
    void previous() {
        if (part > 0) {
            part(part - 1);
        } else if (hasPrevious()) {
            show(problem - 1, true);
        }
    }

    private void part(final int at) {
        part = at;
        task.set(Optional.of(tasks.getOrDefault(problem, List.of()).get(at)));
    }
}
