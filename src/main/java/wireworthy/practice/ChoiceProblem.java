package wireworthy.practice;

import java.util.List;
import java.util.Optional;
import wireworthy.working.Worked;

/**
 * One of a few things to choose from.
 *
 * @param options in the order in which they are shown; exactly one is right
 */
public record ChoiceProblem(
        Template template,
        long seed,
        String text,
        String ask,
        Optional<Worked> circuit,
        List<Option> options,
        int draws)
        implements Exercise {
    public ChoiceProblem {
        options = List.copyOf(options);
    }

    /**
     * One thing to choose.
     *
     * @param why what really happens; said once it is chosen
     * @param slip id of the slip that leads to it
     */
    public record Option(String text, boolean right, String why, Optional<String> slip) {}

    /** The right one. */
    public Option right() {
        return options.stream().filter(Option::right).findFirst().orElseThrow();
    }
}
