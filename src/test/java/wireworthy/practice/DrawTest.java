package wireworthy.practice;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wireworthy.working.Solver;

class DrawTest {
    private final Draw draw = new Draw(new Solver());

    @Test
    void show() {
        final Banks banks = TestBanks.read();
        System.out.println(banks.problems());
        for (final Template template : banks.templates()) {
            for (long seed = 1; seed <= 3; seed++) {
                final Problem p = draw.problem(template, seed);
                System.out.println(seed + " " + p.draws() + " " + p.clashes() + " " + p.text() + " " + p.ask());
            }
        }
        assertThat(banks.problems()).isEmpty();
    }
}
