package wireworthy.practice;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wireworthy.working.Unworkable;

/** Draws each template of a bank many times and says what a learner should not meet. */
public final class BankProof {
    private static final int MEDIAN_DRAWS = 5;
    private static final int WORST_DRAWS = 20;
    private static final int MOST_WORDS = 45;
    private static final int LOOKED_AT = 100;

    /** As many as about 300 different problems give; one learner is never shown one twice. */
    private static final int MOST_REPEATS = 15;

    private final Draw draw;
    private final int times;

    /**
     * A check.
     *
     * @param times how often each template is drawn
     */
    public BankProof(final Draw draw, final int times) {
        this.draw = draw;
        this.times = times;
    }

    /**
     * What was seen of one template.
     *
     * @param medianDraws draws for an accepted exercise, in the median
     * @param worstDraws and in the worst case
     * @param problems what has to be mended
     */
    public record Seen(
            Template template, int medianDraws, int worstDraws, List<BankProblem> problems) {}

    /** What is seen of each template of a bank. */
    public List<Seen> of(final Bank bank) {
        return bank.templates().parallelStream().map(template -> seen(bank, template)).toList();
    }

    private Seen seen(final Bank bank, final Template template) {
        final List<Exercise> drawn = new ArrayList<>();
        Optional<Unworkable> refusal = Optional.empty();
        for (long seed = 1; seed <= times; seed++) {
            try {
                drawn.add(draw.exercise(template, seed));
            } catch (final Unworkable e) {
                refusal = Optional.of(e);
            }
        }
        final int[] draws = drawn.stream().mapToInt(Exercise::draws).sorted().toArray();
        final int median = draws.length == 0 ? 0 : draws[draws.length / 2];
        final int worst = draws.length == 0 ? 0 : draws[draws.length - 1];
        final Findings findings =
                new Findings(bank.file(), bank.lines().getOrDefault(template, 1), template);
        refusal.ifPresent(e -> findings.add("some draws can't be worked: " + e.what(), RANGES));
        tries(findings, median, worst);
        findings.distinctly(drawn);
        drawn.stream().limit(LOOKED_AT).forEach(findings::texts);
        return new Seen(template, median, worst, findings.found());
    }

    private static final String RANGES = "Change the ranges of what is given";

    private static void tries(final Findings findings, final int median, final int worst) {
        if (median > MEDIAN_DRAWS || worst > WORST_DRAWS) {
            findings.add(
                    "it takes %d draws in the median and %d at worst until all slips stand apart"
                            .formatted(median, worst),
                    RANGES
                            + ", or their steps, until %d and %d are enough"
                                    .formatted(MEDIAN_DRAWS, WORST_DRAWS));
        }
    }

    /** What was found wrong in one template, each thing once. */
    private static final class Findings {
        private final String file;
        private final int line;
        private final Template template;
        private final List<BankProblem> found = new ArrayList<>();

        Findings(final String file, final int line, final Template template) {
            this.file = file;
            this.line = line;
            this.template = template;
        }

        List<BankProblem> found() {
            return found.stream().distinct().toList();
        }

        void add(final String what, final String remedy) {
            found.add(new BankProblem(file, line, template.id() + ": " + what, remedy));
        }

        /** Slips apart in each problem, and no two problems of a hundred alike. */
        void distinctly(final List<Exercise> drawn) {
            drawn.stream()
                    .filter(Problem.class::isInstance)
                    .flatMap(problem -> ((Problem) problem).closeness().confused().stream())
                    .distinct()
                    .forEach(what -> add("figures can't tell " + what + " apart", RANGES));
            final int repeats = repeats(drawn);
            if (template.asksFigures() && repeats > MOST_REPEATS) {
                add(repeats + " of " + LOOKED_AT + " problems came twice", "Widen the ranges");
            }
        }

        private static int repeats(final List<Exercise> drawn) {
            final Set<String> texts = new HashSet<>();
            final List<Exercise> first = drawn.subList(0, Math.min(LOOKED_AT, drawn.size()));
            first.forEach(exercise -> texts.add(exercise.text() + exercise.ask()));
            return first.size() - texts.size();
        }

        /** No more words than one takes in at a glance. */
        void texts(final Exercise exercise) {
            longer(exercise.text(), "the text");
            if (exercise instanceof ChoiceProblem choice) {
                choice.options().forEach(option -> longer(option.why(), "a \"why\""));
            }
            if (exercise instanceof OrderProblem order) {
                order.stages().forEach(stage -> longer(stage.why(), "a \"why\""));
            }
        }

        private void longer(final String text, final String what) {
            if (text.split("\\s+").length > MOST_WORDS) {
                add(what + " is longer than " + MOST_WORDS + " words", "Shorten it");
            }
        }
    }
}
