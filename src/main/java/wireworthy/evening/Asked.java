package wireworthy.evening;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import wireworthy.practice.ChoiceProblem;
import wireworthy.practice.Exercise;
import wireworthy.practice.OrderProblem;
import wireworthy.practice.Problem;
import wireworthy.practice.SlipHunt;
import wireworthy.practice.Task;
import wireworthy.practice.Template;
import wireworthy.rules.Ref;
import wireworthy.working.Sold;
import wireworthy.working.Worked;

/**
 * One answer that a sheet asks for: a figure, the letter of an option, or the letters of steps in
 * order.
 *
 * @param ask the question, its figures filled in
 * @param right the right answer as the key has it
 */
public record Asked(String ask, String right) {
    /** The answers of an exercise, in order; one for all but whole circuits. */
    public static List<Asked> of(final Exercise exercise) {
        if (exercise instanceof Problem problem) {
            return problem.parts().stream()
                    .map(part -> new Asked(part.ask(), figure(problem.worked(), part.ref())))
                    .toList();
        }
        return List.of(new Asked(exercise.ask(), letters(exercise)));
    }

    /** How many answers the exercises of a template ask for. */
    public static int count(final Template template) {
        return template.task() instanceof Task.Figures figures ? figures.parts().size() : 1;
    }

    private static String figure(final Worked worked, final Ref ref) {
        return Sold.result(
                worked.plan().setting(), ref.quantity(), worked.value(ref).orElse(Double.NaN));
    }

    private static String letters(final Exercise exercise) {
        if (exercise instanceof ChoiceProblem choice) {
            return letter(choice.options().indexOf(choice.right()));
        }
        if (exercise instanceof OrderProblem order) {
            return IntStream.range(0, order.stages().size())
                    .mapToObj(stage -> letter(order.shown().indexOf(stage)))
                    .collect(Collectors.joining(" "));
        }
        throw new IllegalArgumentException("no sheet has a " + SlipHunt.class.getSimpleName());
    }

    /** The letter of an option or step at a place, counted from 0. */
    public static String letter(final int place) {
        return String.valueOf((char) ('A' + place));
    }
}
