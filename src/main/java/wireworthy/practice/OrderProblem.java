package wireworthy.practice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import wireworthy.working.Worked;

/**
 * Steps to be put in order.
 *
 * @param stages in the right order
 * @param shown the places of the stages, in the order in which they are first shown
 */
public record OrderProblem(
        Template template,
        long seed,
        String text,
        String ask,
        List<Task.Stage> stages,
        List<Integer> shown)
        implements Exercise {
    public OrderProblem {
        stages = List.copyOf(stages);
        shown = List.copyOf(shown);
    }

    /**
     * The first place, from 0, at which an order departs from the right one; none where it is
     * right.
     */
    public OptionalInt departsAt(final List<Integer> order) {
        return IntStream.range(0, stages.size()).filter(i -> order.get(i) != i).findFirst();
    }

    /** Why what belongs at a place comes there. */
    public String why(final int place) {
        return stages.get(place).why();
    }

    @Override
    public Optional<Worked> circuit() {
        return Optional.empty();
    }

    @Override
    public int draws() {
        return 1;
    }
}
