package wireworthy.practice;

import java.util.Optional;
import wireworthy.rules.Ref;
import wireworthy.working.Question;
import wireworthy.working.QuestionReader;
import wireworthy.working.Solver;
import wireworthy.working.Unworkable;
import wireworthy.working.Worked;

/**
 * Draws the numbers of problems so that every slip can be told from the right answer and from every
 * other slip. Safe from several threads.
 */
public final class Draw {
    private static final int MOST_DRAWS = 60;

    private final Solver solver;

    public Draw(final Solver solver) {
        this.solver = solver;
    }

    private record Candidate(Drawn drawn, Question question, Worked worked, Ref asked) {}

    private record Judged(Candidate candidate, Closeness closeness) {}

    /**
     * The problem of a template and a seed: the first draw whose slips stand apart, or the best of
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

    private static SplitMix random(final Template template, final long seed) {
        return SplitMix.of(template.fullId() + "/" + template.version() + "/" + seed);
    }

    /**
     * Draws until something can be worked, whatever its slips.
     *
     * @throws Unworkable where no draw can be
     */
    void tryOut(final Template template) {
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
        final Closeness closeness =
                SlipsApart.of(drawn.worked(), drawn.asked(), drawn.drawn().varied());
        return new Judged(drawn, closeness);
    }

    private Candidate candidate(final Template template, final SplitMix random) {
        final Drawn drawn = new Drawn(template, random);
        final Question question = QuestionReader.read(drawn.question());
        final Worked worked = solver.work(question);
        return new Candidate(drawn, question, worked, asked(template, worked));
    }

    private static Ref asked(final Template template, final Worked worked) {
        final Ref asked = worked.refs(template.find()).get(0);
        if (worked.value(asked).isEmpty()) {
            throw new Unworkable("find", "with these numbers nothing fits: no such size exists");
        }
        return asked;
    }

    private static Problem problem(
            final Template template, final long seed, final int draws, final Judged found) {
        final Candidate drawn = found.candidate();
        return new Problem(
                template,
                seed,
                drawn.question(),
                drawn.worked(),
                drawn.asked(),
                drawn.drawn().filled(template.text()),
                drawn.drawn().filled(template.ask()),
                draws,
                found.closeness());
    }
}
