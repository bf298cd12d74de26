package wireworthy.evening.handin;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import wireworthy.practice.Exercise;
import wireworthy.practice.Problem;
import wireworthy.rules.Figures;
import wireworthy.rules.Reading;

/** What is put down where a figure is asked for and is none: marked, it counts as open. */
public final class Unread {
    private Unread() {}

    /**
     * Why the first answer that can't be read as a figure can't be, in words.
     *
     * @param typed a text for each answer asked for; what is empty is no matter
     */
    public static Optional<String> of(final Exercise exercise, final List<String> typed) {
        return exercise instanceof Problem problem ? figures(problem, typed) : Optional.empty();
    }

    private static Optional<String> figures(final Problem problem, final List<String> typed) {
        return IntStream.range(0, Math.min(typed.size(), problem.parts().size()))
                .filter(i -> !typed.get(i).isBlank())
                .mapToObj(i -> why(problem.parts().get(i), typed.get(i)))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<String> why(final Problem.Part part, final String typed) {
        final Reading reading = Figures.read(typed, part.ref().quantity().dimension(), false);
        if (reading instanceof Reading.Unreadable unreadable) {
            return Optional.of(unreadable.message());
        }
        return reading instanceof Reading.Unclear unclear
                ? Optional.of(unclear.question())
                : Optional.empty();
    }
}
