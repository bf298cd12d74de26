package wireworthy.practice;

import java.util.List;
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

    private record Candidate(
            Drawn drawn, Question question, Worked worked, Ref asked, List<String> clashes) {
        boolean apart() {
            return clashes.isEmpty();
        }
    }

    /**
     * The problem of a template and a seed: the first draw whose slips stand apart, or the best of
     * {@value #MOST_DRAWS}.
     *
     * @throws Unworkable where no draw can be worked
     */
    public Problem problem(final Template template, final long seed) {
        final SplitMix random =
                SplitMix.of(template.fullId() + "/" + template.version() + "/" + seed);
        Optional<Candidate> best = Optional.empty();
        Optional<Unworkable> refusal = Optional.empty();
        int draws = 0;
        while (draws < MOST_DRAWS && best.filter(Candidate::apart).isEmpty()) {
            draws++;
            final Drawn drawn = new Drawn(template, random);
            try {
                best = Optional.of(better(best, candidate(template, drawn)));
            } catch (final Unworkable e) {
                refusal = Optional.of(e);
            }
        }
        return problem(template, seed, draws, found(best, refusal));
    }

    private static Candidate found(
            final Optional<Candidate> best, final Optional<Unworkable> refusal) {
        return best.orElseThrow(() -> refusal.orElseThrow());
    }

    private static Candidate better(final Optional<Candidate> best, final Candidate next) {
        return best.filter(b -> b.clashes().size() <= next.clashes().size()).orElse(next);
    }

    private Candidate candidate(final Template template, final Drawn drawn) {
        final Question question = QuestionReader.read(drawn.question());
        final Worked worked = solver.work(question);
        final Ref asked = asked(template, worked);
        return new Candidate(
                drawn, question, worked, asked, SlipsApart.clashes(worked, asked, drawn.varied()));
    }

    private static Ref asked(final Template template, final Worked worked) {
        final Ref asked = worked.refs(template.find()).get(0);
        if (worked.value(asked).isEmpty()) {
            throw new Unworkable("find", "with these numbers nothing fits: no such size exists");
        }
        return asked;
    }

    private static Problem problem(
            final Template template, final long seed, final int draws, final Candidate found) {
        return new Problem(
                template,
                seed,
                found.question(),
                found.worked(),
                found.asked(),
                found.drawn().filled(template.text()),
                found.drawn().filled(template.ask()),
                draws,
                found.clashes());
    }
}
