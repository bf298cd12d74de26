package wireworthy.practice;

import java.util.List;
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
        List<Integer> order = random.shuffled(right);
        while (order.equals(right)) {
            order = random.shuffled(right);
        }
        return order;
    }
}
