package wireworthy.window;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.LongFunction;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import wireworthy.practice.Draw;
import wireworthy.practice.Exercise;
import wireworthy.practice.Template;
import wireworthy.record.Answer;
import wireworthy.working.Unworkable;

/** Draws exercises that were not among the last hundred. */
final class NotLately {
    private static final int LATELY = 100;

    /** A text without numbers can't be drawn afresh. */
    private static final int MOST_TRIES = 20;

    private record Met(String template, int version, long seed) {}

    private final Draw draw;
    private final Deque<Met> shown = new ArrayDeque<>();
    private final Map<Met, String> texts = new HashMap<>();

    NotLately(final Draw draw) {
        this.draw = draw;
    }

    /**
     * The first exercise, from this seed on, whose text was not met lately.
     *
     * @param answers all answers so far, oldest first
     * @param drawn the exercise of a seed
     */
    Exercise exercise(
            final Template template,
            final long from,
            final List<Answer> answers,
            final LongFunction<Exercise> drawn) {
        final Set<Met> met = met(template, answers);
        final Set<String> textsMet =
                met.stream().map(it -> text(template, it)).collect(Collectors.toSet());
        Exercise exercise = drawn.apply(unmet(template, from, met));
        for (int tries = 1; tries < MOST_TRIES && textsMet.contains(exercise.text()); tries++) {
            exercise = drawn.apply(unmet(template, exercise.seed() + 1, met));
        }
        remember(exercise);
        return exercise;
    }

    private static long unmet(final Template template, final long from, final Set<Met> met) {
        return LongStream.iterate(from, seed -> seed + 1)
                .filter(seed -> !met.contains(met(template, seed)))
                .findFirst()
                .orElseThrow();
    }

    /** Remembers that an exercise is shown. */
    void remember(final Exercise exercise) {
        final Met now = met(exercise.template(), exercise.seed());
        shown.addFirst(now);
        if (shown.size() > LATELY) {
            shown.removeLast();
        }
        texts.put(now, exercise.text());
    }

    private static Met met(final Template template, final long seed) {
        return new Met(template.fullId(), template.version(), seed);
    }

    private Set<Met> met(final Template template, final List<Answer> answers) {
        return Stream.concat(shown.stream(), lately(answers).stream())
                .filter(met -> met.equals(met(template, met.seed())))
                .collect(Collectors.toSet());
    }

    /** The last hundred exercises on record, each once. */
    private static Set<Met> lately(final List<Answer> answers) {
        final Set<Met> last = new LinkedHashSet<>();
        for (int i = answers.size() - 1; i >= 0 && last.size() < LATELY; i--) {
            final Answer answer = answers.get(i);
            last.add(
                    new Met(
                            answer.bank() + "/" + answer.template(),
                            answer.version(),
                            answer.seed()));
        }
        return last;
    }

    private String text(final Template template, final Met met) {
        return texts.computeIfAbsent(met, it -> text(template, it.seed()));
    }

    private String text(final Template template, final long seed) {
        try {
            return draw.exercise(template, seed).text();
        } catch (final Unworkable e) {
            return "";
        }
    }
}
