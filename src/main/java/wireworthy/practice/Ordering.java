package wireworthy.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Puts things into an order drawn by lot. */
final class Ordering {
    private Ordering() {}

    /** The steps of a template, shown in an order that is not the right one. */
    static OrderProblem of(final Template template, final long seed, final SplitMix random) {
        final Drawn drawn = new Drawn(template, random);
        final Task.Order order = (Task.Order) template.task();
        final List<Task.Stage> stages =
                order.stages().stream()
                        .map(s -> new Task.Stage(drawn.filled(s.text()), drawn.filled(s.why())))
                        .toList();
        return new OrderProblem(
                template,
                seed,
                drawn.filled(template.text()),
                drawn.filled(order.ask()),
                stages,
                mixed(stages.size(), random));
    }

    private static List<Integer> mixed(final int size, final SplitMix random) {
        final List<Integer> right = IntStream.range(0, size).boxed().toList();
        List<Integer> order = shuffled(right, random);
        while (order.equals(right)) {
            order = shuffled(right, random);
        }
        return order;
    }

    /** By Fisher and Yates. */
    static <T> List<T> shuffled(final List<T> things, final SplitMix random) {
        final List<T> left = things.stream().collect(Collectors.toCollection(ArrayList::new));
        final List<T> order = new ArrayList<>();
        while (!left.isEmpty()) {
            order.add(left.remove(random.below(left.size())));
        }
        return order;
    }
}
