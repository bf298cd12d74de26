package wireworthy.practice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import wireworthy.rules.Quantity;
import wireworthy.rules.Ref;
import wireworthy.rules.Skill;
import wireworthy.working.Question;
import wireworthy.working.QuestionReader;
import wireworthy.working.Solver;
import wireworthy.working.Unworkable;
import wireworthy.working.Worked;

/**
 * Draws the numbers of exercises; those of figures so that every slip can be told from the right
 * answer and from every other slip. Safe from several threads.
 */
public final class Draw {
    /** The most draws for one exercise. */
    static final int MOST_DRAWS = 60;

    private final Solver solver;

    public Draw(final Solver solver) {
        this.solver = solver;
    }

    /**
     * Numbers drawn and worked.
     *
     * @param asked what has to be answered, in order
     */
    record Candidate(Drawn drawn, Question question, Worked worked, List<Ref> asked) {
        /** A text with its placeholders filled. */
        String filled(final String text) {
            return drawn.filled(text, worked);
        }
    }

    private record Judged(Candidate candidate, Closeness closeness) {}

    /**
     * The exercise of a template and a seed.
     *
     * @throws Unworkable where no draw can be worked
     */
    public Exercise exercise(final Template template, final long seed) {
        return switch (kind(template.task())) {
            case FIGURES -> problem(template, seed);
            case ORDER -> Ordering.of(template, seed, random(template, seed));
            case CHOICE -> new Choosing(this, template, seed).problem();
        };
    }

    private enum Kind {
        FIGURES,
        ORDER,
        CHOICE
    }

    private static Kind kind(final Task task) {
        if (task instanceof Task.Figures) {
            return Kind.FIGURES;
        }
        return task instanceof Task.Order ? Kind.ORDER : Kind.CHOICE;
    }

    /**
     * The figures of a template and a seed: the first draw whose slips stand apart, or the best of
     * {@value #MOST_DRAWS}.
     *
     * @throws Unworkable where no draw can be worked
     */
    public Problem problem(final Template template, final long seed) {
        final SplitMix random = random(template, seed);
        Optional<Judged> best = Optional.empty();
        Optional<Unworkable> refusal = Optional.empty();
        int draws = 0;
        while (draws < MOST_DRAWS && best.filter(b -> b.closeness().none()).isEmpty()) {
            draws++;
            try {
                best = Optional.of(better(best, judged(candidate(template, random))));
            } catch (final Unworkable e) {
                refusal = Optional.of(e);
            }
        }
        return problem(template, seed, draws, found(best, refusal));
    }

    /**
     * A working with one slip in it; empty where the working has one line only.
     *
     * @param own slips made lately, which come first
     */
    public Optional<SlipHunt> hunt(
            final Template template, final long seed, final List<String> own) {
        return hunt(template, seed, own, skill -> true);
    }

    /**
     * The same with the slip in a line of a fit skill, where there is any.
     *
     * @param fit skills in whose lines a slip is better hidden than in others
     */
    public Optional<SlipHunt> hunt(
            final Template template,
            final long seed,
            final List<String> own,
            final Predicate<Skill> fit) {
        final SplitMix random = SplitMix.of("hunt/" + template.fullId() + seed);
        return SlipHunt.of(problem(template, seed), own, fit, random);
    }

    static SplitMix random(final Template template, final long seed) {
        return SplitMix.of(template.fullId() + "/" + template.version() + "/" + seed);
    }

    /**
     * Draws until something can be worked, whatever its slips.
     *
     * @throws Unworkable where no draw can be
     */
    void tryOut(final Template template) {
        if (!template.asksFigures()) {
            exercise(template, 0);
            return;
        }
        final SplitMix random = random(template, 0);
        for (int draws = 1; draws < MOST_DRAWS; draws++) {
            try {
                candidate(template, random);
                return;
            } catch (final Unworkable e) {
                // Other numbers may do; the last ones are refused below.
            }
        }
        candidate(template, random);
    }

    private static Judged found(final Optional<Judged> best, final Optional<Unworkable> refusal) {
        return best.orElseThrow(() -> refusal.orElseThrow());
    }

    private static Judged better(final Optional<Judged> best, final Judged next) {
        return best.filter(b -> !next.closeness().betterThan(b.closeness())).orElse(next);
    }

    private static Judged judged(final Candidate drawn) {
        final List<Closeness> each = new ArrayList<>();
        for (final Ref asked : drawn.asked()) {
            each.add(SlipsApart.of(drawn.worked(), asked, drawn.drawn().varied()));
        }
        return new Judged(drawn, Closeness.together(each));
    }

    Candidate candidate(final Template template, final SplitMix random) {
        final Drawn drawn = new Drawn(template, random);
        final Question question = QuestionReader.read(drawn.question());
        final Worked worked = solver.work(question);
        final List<Ref> asked = new ArrayList<>();
        template.finds().forEach(find -> asked.add(asked(find, worked)));
        return new Candidate(drawn, question, worked, asked);
    }

    private static Ref asked(final Quantity find, final Worked worked) {
        worked.problem(find)
                .ifPresent(
                        refused -> {
                            throw refused;
                        });
        final Ref asked = worked.refs(find).get(0);
        if (worked.value(asked).isEmpty()) {
            throw new Unworkable("find", "with these numbers nothing fits: no such size exists");
        }
        return asked;
    }

    private static Problem problem(
            final Template template, final long seed, final int draws, final Judged found) {
        final Candidate drawn = found.candidate();
        final List<Task.Part> asks = ((Task.Figures) template.task()).parts();
        final List<Problem.Part> parts = new ArrayList<>();
        for (int i = 0; i < asks.size(); i++) {
            parts.add(new Problem.Part(drawn.filled(asks.get(i).ask()), drawn.asked().get(i)));
        }
        return new Problem(
                template,
                seed,
                drawn.question(),
                drawn.worked(),
                drawn.filled(template.text()),
                parts,
                draws,
                found.closeness());
    }
}
