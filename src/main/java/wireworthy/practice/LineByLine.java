package wireworthy.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import wireworthy.rules.Direction;
import wireworthy.rules.Ref;
import wireworthy.working.Step;
import wireworthy.working.Telling;
import wireworthy.working.Worked;

/** Opens the working of a problem line by line, each line fitted to how firmly its skill holds. */
public final class LineByLine {
    private final Problem problem;
    private final Skills skills;
    private final long day;
    private final List<Step> steps;
    private final Step main;

    private LineByLine(final Problem problem, final Skills skills, final long day) {
        this.problem = problem;
        this.skills = skills;
        this.day = day;
        this.steps = Telling.way(problem.worked(), problem.asked());
        this.main = main();
    }

    /**
     * The lines that lead to the asked quantity, which is the last. The line of the problem's main
     * skill and the last one are always asked for.
     */
    public static List<ProblemLine> of(final Problem problem, final Skills skills, final long day) {
        final LineByLine opened = new LineByLine(problem, skills, day);
        return IntStream.range(0, opened.steps.size()).mapToObj(opened::line).toList();
    }

    /** The last line of the main skill; where it has none, such as a unit, the last of all. */
    private Step main() {
        return steps.stream()
                .filter(step -> step.direction().skill() == problem.skill())
                .reduce((earlier, later) -> later)
                .orElse(last());
    }

    private Step last() {
        return steps.get(steps.size() - 1);
    }

    private ProblemLine line(final int index) {
        final Step step = steps.get(index);
        final Worked worked = problem.worked();
        return new ProblemLine(
                index + 1,
                Telling.line(worked, step, worked.values()),
                step.direction().skill(),
                step.equals(main),
                state(step),
                step.direction().formula().inputs().stream().map(this::need).toList());
    }

    private LineState state(final Step step) {
        if (step.equals(main) || step.equals(last())) {
            return LineState.ASKED;
        }
        final var skill = step.direction().skill();
        return LineState.of(
                skills.answers(skill), skills.chance(skill, day, 0), skills.running(skill));
    }

    private ProblemLine.Need need(final Ref ref) {
        final Worked worked = problem.worked();
        final Ref origin = origin(worked, ref);
        return new ProblemLine.Need(
                ProblemLine.name(ref, worked.question().subject(ref)),
                number(origin),
                worked.plan().assumed().contains(origin));
    }

    private OptionalInt number(final Ref ref) {
        return IntStream.range(0, steps.size())
                .filter(i -> steps.get(i).direction().output().equals(ref))
                .map(i -> i + 1)
                .findFirst();
    }

    /** Where a value comes from when lines that only carry it over are left aside. */
    public static Ref origin(final Worked worked, final Ref ref) {
        final List<Ref> road = new ArrayList<>(List.of(ref));
        worked.wayTo(ref).stream()
                .filter(step -> step.direction().reading() == Direction.Reading.CARRIED)
                .sorted((a, b) -> Integer.compare(b.output(), a.output()))
                .filter(step -> step.direction().output().equals(road.get(road.size() - 1)))
                .forEach(step -> road.add(step.direction().formula().inputs().get(0)));
        return road.get(road.size() - 1);
    }
}
