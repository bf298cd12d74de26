package wireworthy.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wireworthy.marking.SlipFigures;
import wireworthy.rules.Dimension;
import wireworthy.rules.Direction;
import wireworthy.rules.FigureText;
import wireworthy.rules.Ref;
import wireworthy.rules.Skill;
import wireworthy.working.Line;
import wireworthy.working.Step;
import wireworthy.working.Telling;
import wireworthy.working.Worked;

/** Opens the working of a problem line by line, each line fitted to how firmly its skill holds. */
public final class LineByLine {
    private final Problem problem;
    private final Skills skills;
    private final long day;
    private final List<Ref> units;
    private final List<Step> steps;
    private final Optional<Step> main;

    private LineByLine(final Problem problem, final Skills skills, final long day) {
        this.problem = problem;
        this.skills = skills;
        this.day = day;
        this.units = SlipFigures.givensInDoubt(problem.worked(), problem.asked());
        this.steps = Telling.way(problem.worked(), problem.asked());
        this.main = main();
    }

    /**
     * The lines that lead to the asked quantity, which is the last: first each given whose unit is
     * easily misread, then the sums. The line of the problem's main skill and the last one are
     * always asked for.
     */
    public static List<ProblemLine> of(final Problem problem, final Skills skills, final long day) {
        final LineByLine opened = new LineByLine(problem, skills, day);
        return Stream.concat(
                        IntStream.range(0, opened.units.size()).mapToObj(opened::unit),
                        IntStream.range(0, opened.steps.size()).mapToObj(opened::line))
                .toList();
    }

    /**
     * The last line of the main skill; where it has none, the last of all. None where the skill is
     * to read the units.
     */
    private Optional<Step> main() {
        if (unitsAreMain()) {
            return Optional.empty();
        }
        return steps.stream()
                .filter(step -> step.direction().skill() == problem.skill())
                .reduce((earlier, later) -> later)
                .or(() -> Optional.of(last()));
    }

    private boolean unitsAreMain() {
        return problem.skill() == Skill.UNITS_AND_PREFIXES && !units.isEmpty();
    }

    private Step last() {
        return steps.get(steps.size() - 1);
    }

    /** A given, put into the unit that the sums want. */
    private ProblemLine unit(final int index) {
        final Ref ref = units.get(index);
        final Worked worked = problem.worked();
        final String name = ProblemLine.name(ref, worked.question().subject(ref));
        final boolean asked = index == units.size() - 1 && unitsAreMain();
        return new ProblemLine(
                index + 1,
                inBaseUnit(ref, name),
                Skill.UNITS_AND_PREFIXES,
                asked,
                asked ? LineState.ASKED : state(Skill.UNITS_AND_PREFIXES),
                List.of(new ProblemLine.Need(name, OptionalInt.empty(), false)));
    }

    private Line inBaseUnit(final Ref ref, final String name) {
        final Worked worked = problem.worked();
        final Dimension dimension = ref.quantity().dimension();
        final double value = worked.value(ref).orElse(Double.NaN);
        return Telling.given(
                worked,
                ref,
                value,
                LineTexts.of("given", "name", name, "unit", FigureText.unit(dimension)));
    }

    private ProblemLine line(final int index) {
        final Step step = steps.get(index);
        final Worked worked = problem.worked();
        return new ProblemLine(
                units.size() + index + 1,
                Telling.line(worked, step, worked.values()),
                step.direction().skill(),
                main.filter(step::equals).isPresent(),
                state(step),
                step.direction().formula().inputs().stream().map(this::need).toList());
    }

    private LineState state(final Step step) {
        return main.filter(step::equals).isPresent() || step.equals(last())
                ? LineState.ASKED
                : state(step.direction().skill());
    }

    private LineState state(final Skill skill) {
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
        final List<Ref> all =
                Stream.concat(units.stream(), steps.stream().map(step -> step.direction().output()))
                        .toList();
        final int at = all.indexOf(ref);
        return at < 0 ? OptionalInt.empty() : OptionalInt.of(at + 1);
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
