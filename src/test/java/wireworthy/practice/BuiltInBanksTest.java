package wireworthy.practice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import wireworthy.working.Solver;

/** Over the banks that came with the program and the two of the tests. */
class BuiltInBanksTest {
    private static final int SEEDS = 40;

    private final Draw draw = new Draw(new Solver());

    private static List<Template> templates() {
        final List<Template> all = new ArrayList<>(Banks.read(List.of()).templates());
        all.addAll(TestBanks.read().templates());
        return all;
    }

    @Test
    void slipsStandApartInEveryProblem() {
        final List<String> near = new ArrayList<>();
        for (final Template template : templates()) {
            for (long seed = 1; seed <= SEEDS; seed++) {
                final Problem problem = draw.problem(template, seed);
                if (!problem.apart()) {
                    near.add(template.fullId() + " " + seed + ": " + problem.clashes());
                }
            }
        }
        assertThat(near).isEmpty();
    }

    @Test
    void fiveDrawsAreEnoughInTheMedian() {
        for (final Template template : templates()) {
            final List<Integer> draws = new ArrayList<>();
            for (long seed = 1; seed <= SEEDS; seed++) {
                draws.add(draw.problem(template, seed).draws());
            }
            Collections.sort(draws);
            assertThat(draws.get(SEEDS / 2)).as(template.fullId()).isLessThanOrEqualTo(5);
        }
    }
}
